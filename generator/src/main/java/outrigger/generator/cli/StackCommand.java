package outrigger.generator.cli;

import outrigger.generator.param.BadDimension;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Refused;
import outrigger.generator.stack.Found;
import outrigger.generator.stack.StackParams;
import outrigger.generator.stack.Stacks;
import outrigger.presets.Shelf;
import picocli.CommandLine.Model.CommandSpec;

/** {@code stack TARGET}: an exact thickness from what is at hand; its options are what {@link StackParams} declares. */
final class StackCommand implements Command {
  /** What messages begin with. */
  private static final String SUBJECT = "stack";
  private static final String TARGET = "target";

  private final Root root;
  private final CommandSpec spec;
  private final ParameterOptions<StackParams> options;

  private StackCommand(Root root) {
    this.root = root;
    this.spec = CommandSpec.wrapWithoutInspection(this);
    spec.usageMessage().header("Stack an exact thickness from sheet, washers, shims and a printed block.")
        .sortOptions(false).abbreviateSynopsis(true);
    this.options = new ParameterOptions<>(spec, StackParams.class, TARGET);
  }

  static CommandSpec spec(Root root) {
    return new StackCommand(root).spec;
  }

  @Override
  public int run(Console console) {
    Shelf shelf = root.shelf();
    ParamValues<StackParams> values = options.values();
    StackParams given = values.resolve(SUBJECT, shelf).record();
    Found found = find(given, values);
    int exit = found.answers().isEmpty() ? Exit.NONE_FOUND : Exit.DONE;
    if (console.json()) {
      console.json(exit, json -> StackJson.write(json, given, found, shelf));
    } else {
      StackReport.lines(given, found, shelf).forEach(console::line);
    }
    return exit;
  }

  private static Found find(StackParams given, ParamValues<StackParams> values) {
    try {
      return Stacks.find(given);
    } catch (BadDimension e) {
      throw new InputException(Refused.by(e).fault(SUBJECT, values));
    }
  }
}
