package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.Optional;
import outrigger.generator.plan.PresetFiles;
import outrigger.presets.Shelf;
import picocli.CommandLine;

/** The options every command has. */
@CommandLine.Command(name = "outrigger", sortOptions = false,
    header = "Makes the parts between a model truck's body and its chassis, proven sound before printing.",
    footer = {"", "Exit codes: 0 done, 1 defect of the program, 2 bad input, 3 built or read but not sound",
        "or not printable, or no stack found.",
        "Lengths are in mm unless they carry in or thou: 6, 6mm, 0.25in, 40thou;",
        "masses in g unless they carry kg, oz or lb."})
final class Root implements Command {
  static final String PRESETS = "--presets";
  static final String JSON = "--json";

  @CommandLine.Option(names = PRESETS, paramLabel = "FILE", scope = CommandLine.ScopeType.INHERIT,
      description = "A table file of your own, laid over the preset tables.")
  private Optional<String> presets = Optional.empty();

  @CommandLine.Option(names = JSON, scope = CommandLine.ScopeType.INHERIT,
      description = "Print one JSON object, faults included.")
  private boolean json;

  @CommandLine.Option(names = {"--help", "-h"}, usageHelp = true, scope = CommandLine.ScopeType.INHERIT,
      description = "Print this help.")
  private boolean help;

  @CommandLine.Option(names = "--version", versionHelp = true, description = "Print the version.")
  private boolean version;

  /** Options read already. */
  static Root of(OptionTexts texts) {
    Root root = new Root();
    root.presets = texts.last(PRESETS);
    return root;
  }

  Optional<Path> ownPresets() {
    return presets.map(text -> Arguments.path(PRESETS, text));
  }

  Shelf shelf() {
    return PresetFiles.shelf(ownPresets());
  }

  @Override
  public int run(Console console) {
    throw Arguments.missing("outrigger", "needs a command", "make, batch, plan, check, hold, stack, presets or kinds");
  }
}
