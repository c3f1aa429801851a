package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.param.Origin;
import outrigger.generator.print.LimitTexts;
import outrigger.generator.print.LoadAxis;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Limit;
import picocli.CommandLine;

/** What commands take to set limits of printing. */
final class PrintOptions {
  static final String LIMIT = "--limit";
  static final String LOAD = "--load";

  @CommandLine.Option(names = LIMIT, paramLabel = "NAME=VALUE",
      description = "A limit of printing in place of the printer's, such as minimum-wall=0.8; may be given often. "
          + "(docs/printability.md lists them)")
  private List<String> limits = new ArrayList<>();

  @CommandLine.Option(names = LOAD, paramLabel = "AXIS",
      description = "The axis of the file along which a part is pulled or bent: poses whose layers lie across it rank "
          + "lower. (X, Y or Z; default the part's longest direction)")
  private String load = "";

  /** Options read already. */
  static PrintOptions of(OptionTexts texts) {
    PrintOptions options = new PrintOptions();
    options.limits.addAll(texts.all(LIMIT));
    options.load = texts.last(LOAD).orElse("");
    return options;
  }

  /** The axis of the load, if one is given. */
  Optional<Axis> load() {
    return load.isEmpty() ? Optional.empty() : Optional.of(LoadAxis.read(load, Origin.option(LOAD)));
  }

  /** The limits given. */
  Map<Limit, Double> limits() {
    return LimitTexts.read(limits, Origin.option(LIMIT));
  }
}
