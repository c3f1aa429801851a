package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.plan.Materials;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.Request;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Extra;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;

/**
 * {@code make} for one kind.
 *
 * @param texts what is given for its parameters and for the options of {@link KindOptions}; read when it runs
 */
record KindCommand<P extends Record>(Root root, Accessory<P> accessory, ParamSpec<P> parameters, OptionTexts texts,
    PrintOptions printing, WriteOptions writing) implements Command {

  @Override
  public int run(Console console) {
    Shelf shelf = root.shelf();
    Request<P> request = new Request<>(texts.last(KindOptions.NAME).orElse(accessory.kind()), accessory,
        texts.values(parameters), Origin.option(KindOptions.NAME));
    Optional<Given> material = texts.last(KindOptions.MATERIAL)
        .map(text -> Given.of(text, Origin.option(KindOptions.MATERIAL)));
    Plan plan = new Plan("", "", shelf, Materials.find(shelf, material), Stock.NONE, Optional.empty(),
        Optional.empty(), false, List.of(request), List.of()).with(printing.limits(), printing.load());
    Path folder = Arguments.path(KindOptions.OUT, texts.last(KindOptions.OUT).orElse(Arguments.OUT));
    Workshop.refuseUnfit(folder);
    Workshop workshop = new Workshop(Runtime.getRuntime().availableProcessors(), console.progress());
    Batch batch = workshop.make(plan);
    writing.write(workshop, batch, folder, texts.has(KindOptions.PICTURE) ? new Extra[] {Extra.PICTURES} : new Extra[0]);
    MakeReport.print(console, batch, folder);
    return Exit.DONE;
  }
}
