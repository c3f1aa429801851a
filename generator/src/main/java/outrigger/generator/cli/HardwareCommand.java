package outrigger.generator.cli;

import java.util.Map;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.joint.HardwareCsv;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.PlanReader;
import outrigger.generator.run.HardwareJson;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import picocli.CommandLine;

/** {@code hardware PLAN}: screws, nuts, washers, inserts and magnets of a whole plan. */
@CommandLine.Command(name = "hardware", sortOptions = false, header = "List the hardware of a plan.",
    description = "Screw lengths are chosen over all parts at once: the fewest different articles there can be, then "
        + "those on hand. Writes no file.")
final class HardwareCommand implements Command {
  private final Root root;
  private final Kinds kinds;

  @CommandLine.Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
  private String plan = "";

  @CommandLine.Option(names = "--csv", description = "Print the list as CSV, one line an article.")
  private boolean csv;

  HardwareCommand(Root root, Kinds kinds) {
    this.root = root;
    this.kinds = kinds;
  }

  @Override
  public int run(Console console) {
    Plan read = new PlanReader(kinds, root.ownPresets(), Map.of()).read(Arguments.path("PLAN", plan));
    HardwareList list = new Workshop(1, Progress.NONE).hardware(read);
    if (console.json()) {
      console.json(Exit.DONE, json -> {
        json.put("plan", read.file()).put("title", read.title());
        HardwareJson.write(json, list);
      });
    } else if (csv) {
      console.out().print(HardwareCsv.text(list));
    } else {
      HardwareReport.lines(list).forEach(console::line);
    }
    return Exit.DONE;
  }
}
