package outrigger.generator.cli;

import java.util.List;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import picocli.CommandLine;

/** {@code make KIND}: one part from options. Each kind is a command under it. */
@CommandLine.Command(name = "make", sortOptions = false, header = "Make one part from options.",
    synopsisSubcommandLabel = "KIND")
final class MakeCommand implements Command {
  private final List<String> kinds;

  private MakeCommand(List<String> kinds) {
    this.kinds = kinds;
  }

  /**
   * @param asked the kind that is asked for and alone described; all are where it is none of them, so that help lists them
   */
  static CommandLine of(Root root, Kinds kinds, String asked) {
    CommandLine make = new CommandLine(new MakeCommand(kinds.names()));
    for (Accessory<?> accessory : kinds.all()) {
      if (accessory.kind().equals(asked) || kinds.find(asked).isEmpty()) {
        make.addSubcommand(accessory.kind(), KindOptions.spec(root, accessory));
      }
    }
    return make;
  }

  @Override
  public int run(Console console) {
    throw Arguments.missing("outrigger make", "needs a kind", String.join(", ", kinds));
  }
}
