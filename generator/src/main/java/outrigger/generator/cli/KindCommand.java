package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.plan.Materials;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.Request;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Extra;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code make} for one kind; its options are what the kind declares. */
final class KindCommand<P extends Record> implements Command {
  private static final String NAME = "--name";
  private static final String OUT = "--out";
  private static final String MATERIAL = "--material";

  private final Root root;
  private final Accessory<P> accessory;
  private final CommandSpec spec;
  private final ParameterOptions<P> options;
  private final PrintOptions printing = new PrintOptions();
  private final WriteOptions writing = new WriteOptions();
  private boolean picture;

  private KindCommand(Root root, Accessory<P> accessory) {
    this.root = root;
    this.accessory = accessory;
    this.spec = CommandSpec.wrapWithoutInspection(this);
    this.options = new ParameterOptions<>(spec, accessory.parameters());
  }

  static CommandSpec spec(Root root, Accessory<?> accessory) {
    return new KindCommand<>(root, accessory).describe();
  }

  private CommandSpec describe() {
    spec.usageMessage().header(accessory.summary().replace("%", "%%")).sortOptions(false).abbreviateSynopsis(true);
    options.add(NAME, "NAME", "What the file is called, without .stl. (default " + accessory.kind() + ")");
    options.add(MATERIAL, "MATERIAL", "What it is printed in, to tell its weight. (a name of the table materials)");
    options.add(OUT, "FOLDER", "Where the file goes. (default " + Arguments.OUT + ")");
    spec.addOption(OptionSpec.builder("--picture").type(boolean.class).arity("0")
        .description("Draw the part beside its file, NAME.png, and what was measured on it, NAME.map.png.")
        .setter(new CommandLine.Model.ISetter() {
          @Override
          public <T> T set(T value) {
            picture = Boolean.TRUE.equals(value);
            return null;
          }
        }).build());
    spec.addMixin("printing", CommandSpec.forAnnotatedObject(printing));
    spec.addMixin("writing", CommandSpec.forAnnotatedObject(writing));
    return spec;
  }

  @Override
  public int run(Console console) {
    Shelf shelf = root.shelf();
    Request<P> request = new Request<>(options.text(NAME).orElse(accessory.kind()), accessory, options.values(), Origin.option(NAME));
    Optional<Given> material = options.text(MATERIAL).map(t -> Given.of(t, Origin.option(MATERIAL)));
    Plan plan = new Plan("", "", shelf, Materials.find(shelf, material), Stock.NONE, Optional.empty(),
        Optional.empty(),
        List.of(request), List.of())
        .with(printing.limits(), printing.load());
    Path folder = Arguments.path(OUT, options.text(OUT).orElse(Arguments.OUT));
    Workshop.refuseUnfit(folder);
    Workshop workshop = new Workshop(Runtime.getRuntime().availableProcessors(), console.progress());
    Batch batch = workshop.make(plan);
    writing.write(workshop, batch, folder, picture ? new Extra[] {Extra.PICTURES} : new Extra[0]);
    MakeReport.print(console, batch, folder);
    return Exit.DONE;
  }
}
