package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.joint.HardwareCsv;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Param;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Unit;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.PlanReader;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Extra;
import outrigger.generator.run.Working;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;
import picocli.CommandLine;

/** {@code batch PLAN}: every part of a plan. */
@CommandLine.Command(name = "batch", sortOptions = false, header = "Make every part of a plan.",
    description = "All parts are built, proven and measured before the first file is written; with one fault, one part that "
        + "will not print as drawn, or two things in one place on the truck, none is.")
final class BatchCommand implements Command {
  private final Root root;
  private final Kinds kinds;

  @CommandLine.Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
  private String plan = "";

  @CommandLine.Option(names = "--out", paramLabel = "FOLDER",
      description = "Where the files, manifest.json and hardware.csv go. (default out)")
  private String out = Arguments.OUT;

  @CommandLine.Option(names = "--printer", paramLabel = "PRINTER",
      description = "A printer for every part, in place of the plan's. (a name of the table printers)")
  private String printer = "";

  @CommandLine.Option(names = "--material", paramLabel = "MATERIAL",
      description = "A material, in place of the plan's. (a name of the table materials)")
  private String material = "";

  @CommandLine.Option(names = "--threads", paramLabel = "COUNT",
      description = "Parts to work on at once; the files do not depend on it. (1 to 256; default one a core)")
  private String threads = "";

  @CommandLine.Option(names = "--picture",
      description = "Draw each part beside its file, NAME.png, what was measured on it, NAME.map.png, and "
          + "all of them as parts.png.")
  private boolean picture;

  @CommandLine.Mixin
  private PrintOptions printing = new PrintOptions();

  @CommandLine.Mixin
  private WriteOptions writing = new WriteOptions();

  BatchCommand(Root root, Kinds kinds) {
    this.root = root;
    this.kinds = kinds;
  }

  /** Declared as a parameter, so that the one parser reads it. */
  record Threads(
      @Param(unit = Unit.NONE, min = 1, max = 256, def = "1", help = "Parts to work on at once.") int threads) {}

  private int threads() {
    return threads.isEmpty() ? Runtime.getRuntime().availableProcessors()
        : ParamValues.record(Threads.class, Shelf.standard(), "threads", threads).threads();
  }

  private Map<String, Given> overrides() {
    Map<String, Given> overrides = new LinkedHashMap<>();
    Map.of("printer", printer, "material", material).forEach((key, text) -> {
      if (!text.isEmpty()) {
        overrides.put(key, Given.of(text, Origin.option("--" + key)));
      }
    });
    return overrides;
  }

  private Extra[] extras(Working working) {
    Extra manifest = Extra.manifest(working::write);
    Extra list = Extra.text(HardwareCsv.FILE, HardwareCsv.text(working.hardware()));
    return picture ? new Extra[] {manifest, list, Extra.PICTURES} : new Extra[] {manifest, list};
  }

  @Override
  public int run(Console console) {
    Workshop workshop = new Workshop(threads(), console.progress());
    Path folder = Arguments.path("--out", out);
    Workshop.refuseUnfit(folder);
    Plan read = new PlanReader(kinds, root.ownPresets(), overrides()).read(Arguments.path("PLAN", plan))
        .with(printing.limits(), printing.load());
    Working working = workshop.working(read);
    if (!writing.isAnyway() && working.standing().map(standing -> !standing.clashes().isClear()).orElse(false)) {
      return Failures.clashing(console, working);
    }
    Batch batch = workshop.make(read);
    writing.write(workshop, batch, folder, extras(working));
    MakeReport.printTable(console, batch, working, folder);
    return Exit.DONE;
  }
}
