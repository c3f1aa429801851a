package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outrigger.generator.param.Origin;
import outrigger.generator.print.LimitTexts;
import outrigger.shapes.print.Limit;
import picocli.CommandLine;

/** What commands take to set limits of printing. */
final class PrintOptions {
  private static final String LIMIT = "--limit";

  @CommandLine.Option(names = LIMIT, paramLabel = "NAME=VALUE",
      description = "A limit of printing in place of the printer's, such as minimum-wall=0.8; may be given often. "
          + "(docs/printability.md lists them)")
  private List<String> limits = new ArrayList<>();

  /** The limits given. */
  Map<Limit, Double> limits() {
    return LimitTexts.read(limits, Origin.option(LIMIT));
  }
}
