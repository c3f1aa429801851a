package outrigger.generator.run;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Part;
import outrigger.generator.joint.Block;
import outrigger.generator.joint.Fitted;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.joint.Stock;
import outrigger.generator.layout.Arrangement;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Refused;
import outrigger.generator.param.Texts;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.Request;
import outrigger.generator.print.Limits;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.PrintLimits;

/**
 * Makes parts: the front of Outrigger as a library.
 *
 * <pre>{@code
 * Workshop workshop = new Workshop();
 * Plan plan = Workshop.one("bumper-spacer", "front", Shelf.standard(), Map.of("thickness", "0.25in"));
 * Batch batch = workshop.make(plan);
 * workshop.write(batch, Path.of("out"));
 * }</pre>
 */
public final class Workshop {
  private final int threads;
  private final Crew crew;
  private final Progress progress;
  /** The plan last asked about: what stands on its truck and what is written are the same parts. */
  private Optional<Drawn> last = Optional.empty();

  /** A workshop that uses every core and tells nobody how far it is. */
  public Workshop() {
    this(Runtime.getRuntime().availableProcessors(), Progress.NONE);
  }

  /**
   * @param threads how many parts to work on at once, at least 1; the result does not depend on it
   * @param progress told of every part finished
   */
  public Workshop(int threads, Progress progress) {
    if (threads < 1) {
      throw new IllegalArgumentException("threads is " + threads);
    }
    this.threads = threads;
    this.crew = new Crew(threads);
    this.progress = progress;
  }

  /**
   * A plan for one part of a kind.
   *
   * @param name what its file is called
   * @param parameters texts by key, as a user would write them; the others stand at their defaults
   * @throws InputException if there is no such kind or parameter
   */
  public static Plan one(String kind, String name, Shelf shelf, Map<String, String> parameters) {
    Accessory<?> accessory = Accessories.kinds().find(kind).orElseThrow(() -> new InputException(
        Fault.of("", "there is no kind " + Texts.quoted(kind), NearMiss.advice(kind, Accessories.kinds().names()),
            Origin.option("kind"))));
    return new Plan("", "", shelf, Optional.empty(), Stock.NONE, Optional.empty(), Optional.empty(), false,
        List.of(request(accessory, name, parameters)), List.of());
  }

  private static <P extends Record> Request<P> request(Accessory<P> accessory, String name,
      Map<String, String> parameters) {
    ParamValues<P> values = ParamValues.of(ParamSpec.of(accessory.parameters()));
    for (Map.Entry<String, String> given : parameters.entrySet()) {
      values = values.with(given.getKey(), Given.of(given.getValue(), Origin.option(given.getKey())));
    }
    return new Request<>(name, accessory, values, Origin.option("name"));
  }

  /**
   * Makes and proves every part of a plan. Writes nothing.
   *
   * @throws InputException with every fault of the plan, if it has any
   * @throws UnsoundException if a mesh does not pass its proof
   */
  public Batch make(Plan plan) {
    Drawn drawn = drawn(plan);
    List<Draft> drafts = drawn.drafts();
    List<Job> jobs = new ArrayList<>();
    for (Draft draft : drafts) {
      for (Part part : draft.parts()) {
        jobs.add(new Job(drawn, draft, part));
      }
    }
    progress.begin(jobs.size());
    return batch(plan, crew.each(jobs, this::finish));
  }

  /**
   * What the parts of a plan are assembled with, the screws chosen over all of them so that none reaches into an item.
   * Writes nothing.
   *
   * @throws InputException with every fault of the plan, if it has any, every joint that no screw suits, or
   *     every item that finds no place
   */
  public HardwareList hardware(Plan plan) {
    List<Draft> drafts = drawn(plan).drafts();
    return hardware(plan, drafts, arranged(plan, drafts));
  }

  /** Items in their places; where one finds none, joints that no screw suits are told beside it. */
  private static Arrangement arranged(Plan plan, List<Draft> drafts) {
    try {
      return new Rooms(plan, drafts).arrange();
    } catch (InputException e) {
      List<Fault> faults = new ArrayList<>(e.faults());
      addWhatIsThrown(() -> hardware(plan, drafts, new Arrangement(List.of(), List.of(), List.of())), faults);
      FaultList.throwIfAny(faults);
      throw e;
    }
  }

  private static HardwareList hardware(Plan plan, List<Draft> drafts, Arrangement layout) {
    List<Fitted> fitted = new ArrayList<>();
    Map<String, List<Block>> between = Rooms.between(layout, plan, drafts);
    for (Draft draft : drafts) {
      draft.parts().forEach(part -> fitted.add(new Fitted(draft.name(part), draft.request().name(),
          part.fixings().clearOf(Rooms.blocks(layout, draft.name(part), part))
              .clearOf(between.getOrDefault(draft.name(part), List.of())), draft.request().where())));
    }
    fitted.addAll(BodyHalves.of(plan.fit(), drafts));
    return HardwareList.of(fitted, plan.stock(), plan.shelf());
  }

  /**
   * Works out what concerns all parts of a plan: their hardware, and where the truck's items lie. Writes nothing.
   *
   * @throws InputException with every fault of the plan, if it has any; every joint that no screw suits; or every item
   *     that finds no place
   */
  public Working working(Plan plan) {
    Drawn drawn = drawn(plan);
    List<Draft> drafts = drawn.drafts();
    Arrangement layout = arranged(plan, drafts);
    HardwareList hardware = hardware(plan, drafts, layout);
    return new Working(hardware, layout, plan.fit(),
        plan.fit().map(fit -> new Stand(fit, drawn, hardware, layout.laid()).standing()));
  }

  private synchronized Drawn drawn(Plan plan) {
    if (last.isEmpty() || last.get().plan() != plan) {
      List<Draft> drafts = drafts(plan);
      // Parts are made side by side; a part alone is made and measured on all threads instead.
      boolean alone = drafts.size() == 1 && drafts.get(0).parts().size() == 1;
      last = Optional.of(new Drawn(plan, drafts, Workers.of(alone ? threads : 1)));
    }
    return last.get();
  }

  private List<Draft> drafts(Plan plan) {
    List<Draft> drafts = crew.each(plan.requests(), request -> draft(request, plan));
    List<Fault> faults = new ArrayList<>(plan.faults());
    for (Draft draft : drafts) {
      faults.addAll(draft.faults());
    }
    faults.addAll(FileNames.faults(plan.requests(), drafts));
    if (!faults.isEmpty()) {
      faults.addAll(beside(plan, drafts));
    }
    FaultList.throwIfAny(faults);
    return drafts;
  }

  /** What would be told next, as far as it is certain while something else is at fault. */
  private static List<Fault> beside(Plan plan, List<Draft> drafts) {
    List<Draft> sound = drafts.stream().filter(draft -> draft.faults().isEmpty()).toList();
    List<Fault> faults = new ArrayList<>();
    addWhatIsThrown(() -> {
      List<Draft> missing = drafts.stream().filter(draft -> !draft.faults().isEmpty()).toList();
      faults.addAll(new Rooms(plan, sound).certainFaults(missing.stream().map(draft -> draft.request().name()).toList(),
          plan.faults()));
    }, faults);
    addWhatIsThrown(() -> hardware(plan, sound, new Arrangement(List.of(), List.of(), List.of())), faults);
    return faults;
  }

  private static void addWhatIsThrown(Runnable work, List<Fault> faults) {
    try {
      work.run();
    } catch (InputException e) {
      faults.addAll(e.faults());
    }
  }

  private Job.Outcome finish(Job job) {
    Job.Outcome outcome = job.finish();
    progress.finished(job.name());
    return outcome;
  }

  private static Batch batch(Plan plan, List<Job.Outcome> outcomes) {
    List<Fault> faults = new ArrayList<>();
    List<UnsoundException.Unsound> unsound = new ArrayList<>();
    List<Made> made = new ArrayList<>();
    for (Job.Outcome outcome : outcomes) {
      addIfAny(outcome.fault(), faults);
      addIfAny(outcome.unsound(), unsound);
      addIfAny(outcome.made(), made);
    }
    FaultList.throwIfAny(faults);
    if (!unsound.isEmpty()) {
      throw new UnsoundException(unsound);
    }
    return new Batch(plan.file(), plan.title(), plan.material(), made);
  }

  private static <T> void addIfAny(Optional<T> one, List<T> all) {
    if (one.isPresent()) {
      all.add(one.get());
    }
  }

  /**
   * Looks whether a folder can be written, before any work is done. Changes nothing.
   *
   * @throws InputException if a file stands in its place or it may not be written
   */
  public static void refuseUnfit(Path folder) {
    new OutputFolder(folder).refuseIfUnfit();
  }

  /**
   * Writes every part of a batch into a folder, made if need be; all of them or none.
   *
   * @param extras what to write beside the print files
   * @return the files written
   * @throws InputException if the folder or a file in it cannot be written
   * @throws UnprintableException if a part has a concern that is an error
   */
  public List<Path> write(Batch batch, Path folder, Extra... extras) {
    for (Made made : batch.parts()) {
      if (made.report().hasErrors()) {
        throw new UnprintableException(batch);
      }
    }
    return writeAnyway(batch, folder, extras);
  }

  /**
   * The same, parts that will not print as drawn included.
   *
   * @return the files written
   * @throws InputException if the folder or a file in it cannot be written
   */
  public List<Path> writeAnyway(Batch batch, Path folder, Extra... extras) {
    List<OutputFile> files = new ArrayList<>();
    for (Made made : batch.parts()) {
      files.add(made.output());
    }
    for (Extra extra : extras) {
      files.addAll(extra.files(batch, crew));
    }
    return new OutputFolder(folder).write(files);
  }

  /**
   * Writes texts by file name into a folder, all of them or none, in UTF-8.
   *
   * @throws InputException if the folder or a file in it cannot be written
   */
  public static void writeTexts(Map<String, String> texts, Path folder) {
    List<OutputFile> files = new ArrayList<>();
    texts.forEach((name, text) -> files.add(new OutputFile(name, text.getBytes(StandardCharsets.UTF_8))));
    new OutputFolder(folder).write(files);
  }

  /**
   * Writes files by name into a folder, all of them or none.
   *
   * @throws InputException if the folder or a file in it cannot be written
   */
  public static void writeBytes(Map<String, byte[]> files, Path folder) {
    List<OutputFile> all = new ArrayList<>();
    files.forEach((name, bytes) -> all.add(new OutputFile(name, bytes)));
    new OutputFolder(folder).write(all);
  }

  private static <P extends Record> Draft draft(Request<P> request, Plan plan) {
    Shelf shelf = plan.shelf();
    try {
      ParamValues.Resolved<P> resolved = request.values().resolve(request.name(), shelf);
      return new Draft(request, resolved.values(), built(request, resolved.record(), shelf),
          limits(request, resolved.record(), plan), List.of());
    } catch (InputException e) {
      return new Draft(request, List.of(), List.of(), PrintLimits.standard(),
          e.faults().stream().map(fault -> FaultList.atPart(fault, request.where())).toList());
    }
  }

  private static PrintLimits limits(Request<?> request, Record parameters, Plan plan) {
    try {
      return Limits.of(parameters, plan.material(), request.limits());
    } catch (RuntimeException e) {
      throw new InputException(Refused.by(e).fault(request.name(), request.values()));
    }
  }

  private static <P extends Record> List<Part> built(Request<P> request, P parameters, Shelf shelf) {
    try {
      return request.accessory().build(parameters, shelf);
    } catch (RuntimeException e) {
      throw new InputException(Refused.by(e).fault(request.name(), request.values()));
    }
  }
}
