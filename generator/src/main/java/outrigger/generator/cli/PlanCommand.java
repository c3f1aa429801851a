package outrigger.generator.cli;

import picocli.CommandLine;

/** {@code plan}: what is done with plans themselves. */
@CommandLine.Command(name = "plan", sortOptions = false, header = "Write a starting plan.", synopsisSubcommandLabel = "new")
final class PlanCommand implements Command {
  private PlanCommand() {}

  static CommandLine of(Root root) {
    CommandLine plan = new CommandLine(new PlanCommand());
    plan.addSubcommand("new", NewPlanCommand.spec(root));
    return plan;
  }

  @Override
  public int run(Console console) {
    throw Arguments.missing("outrigger plan", "needs to be told what to do", "new");
  }
}
