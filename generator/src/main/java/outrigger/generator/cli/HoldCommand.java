package outrigger.generator.cli;

import outrigger.generator.magnet.Hold;
import outrigger.generator.magnet.HoldParams;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Refused;
import outrigger.presets.Shelf;
import picocli.CommandLine.Model.CommandSpec;

/** {@code hold}: what the magnets of a mount hold; its options are what {@link HoldParams} declares. */
final class HoldCommand implements Command {
  /** What messages begin with. */
  private static final String SUBJECT = "hold";

  private final Root root;
  private final CommandSpec spec;
  private final ParameterOptions<HoldParams> options;

  private HoldCommand(Root root) {
    this.root = root;
    this.spec = CommandSpec.wrapWithoutInspection(this);
    spec.usageMessage().header("Tell what a magnet mount holds, and whether the body stays on.").sortOptions(false)
        .abbreviateSynopsis(true);
    this.options = new ParameterOptions<>(spec, HoldParams.class);
  }

  static CommandSpec spec(Root root) {
    return new HoldCommand(root).spec;
  }

  @Override
  public int run(Console console) {
    Shelf shelf = root.shelf();
    Hold hold = hold(options.values(), shelf);
    if (console.json()) {
      console.json(Exit.DONE, json -> HoldJson.write(json, hold));
    } else {
      HoldReport.lines(hold).forEach(console::line);
    }
    return Exit.DONE;
  }

  private static Hold hold(ParamValues<HoldParams> values, Shelf shelf) {
    HoldParams given = values.resolve(SUBJECT, shelf).record();
    try {
      return Hold.of(given, shelf);
    } catch (BadDimension e) {
      throw new InputException(Refused.by(e).fault(SUBJECT, values));
    }
  }
}
