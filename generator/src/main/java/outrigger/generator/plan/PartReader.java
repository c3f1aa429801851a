package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlTable;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.generator.param.Texts;
import outrigger.generator.print.LoadAxis;
import outrigger.generator.truck.Truck;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Limit;

/** Reads one part of a plan: every request its lists make. */
final class PartReader {
  private static final String KIND = "kind";
  private static final String NAME = "name";
  private static final String LIMITS = "limits";
  private static final String LOAD = "load";
  private static final Set<String> OWN = Set.of(KIND, NAME, LIMITS, LOAD);

  private final String file;
  private final Kinds kinds;
  private final Defaults defaults;
  private final List<Fault> faults;
  private final Map<String, Given> options;
  private final Optional<Truck> truck;
  private final Optional<TruckFit> fit;
  private final Shelf shelf;
  /** Whether the plan describes a truck that cannot be solved, so that what hangs on it is not told of again. */
  private final boolean isUnsolved;

  PartReader(String file, Kinds kinds, Defaults defaults, Map<String, Given> options, List<Fault> faults,
      Optional<Truck> truck, Optional<TruckFit> fit, boolean isUnsolved, Shelf shelf) {
    this.truck = truck;
    this.shelf = shelf;
    this.fit = fit;
    this.isUnsolved = isUnsolved;
    this.file = file;
    this.kinds = kinds;
    this.defaults = defaults;
    this.faults = faults;
    this.options = options;
  }

  List<Request<?>> read(TomlTable table, Origin where) {
    Optional<String> kind = word(table, KIND);
    if (!table.contains(List.of(KIND))) {
      faults.add(Fault.of("", "a part has no kind (" + where.words() + ")",
          "Add kind = \"...\", one of: " + String.join(", ", kinds.names()) + ".", where));
    }
    if (kind.isEmpty()) {
      return List.of();
    }
    Optional<Accessory<?>> accessory = kinds.find(kind.get());
    if (accessory.isEmpty()) {
      Origin place = TomlText.place(file, table, KIND);
      faults.add(new Fault("", KIND, "there is no kind " + Texts.quoted(kind.get()) + " (" + place.words() + ")",
          kind.get(), "", NearMiss.advice(kind.get(), kinds.names()), place));
      return List.of();
    }
    return requests(table, accessory.get(), where);
  }

  private <P extends Record> List<Request<?>> requests(TomlTable table, Accessory<P> accessory, Origin where) {
    String name = word(table, NAME).orElse(accessory.kind());
    Origin nameWhere = table.contains(List.of(NAME)) ? TomlText.place(file, table, NAME) : where;
    Optional<Fault> badName = Names.fault(name, nameWhere);
    badName.ifPresent(faults::add);
    // A part whose name cannot stand is called by its place, so that its other faults are told too.
    String called = badName.isEmpty() ? name : accessory.kind() + "-of-line-" + where.line();
    int before = faults.size();
    ParamSpec<P> spec = ParamSpec.of(accessory.parameters());
    List<Variants> variants = variants(table, spec, accessory.kind());
    Map<Limit, Double> limits = LimitTable.read(file, table, LIMITS, faults);
    Optional<Axis> load = load(table);
    for (int i = before; i < faults.size(); i++) {
      faults.set(i, faults.get(i).about(called));
    }
    List<Request<?>> all = new ArrayList<>();
    for (Request<?> one : expand(called, accessory, spec, variants, nameWhere)) {
      Request<?> request = one.with(limits);
      List<Request<?>> filled = isUnsolved ? TruckFill.unsolved(request, table, file, truck, shelf, faults)
          : fit.isEmpty() ? List.of(request)
          : new TruckFill(file, fit.get(), shelf, faults).fill(request, table, table.contains(List.of(NAME)));
      filled.forEach(each -> all.add(each.loaded(load)));
    }
    return all;
  }

  /** The axis a part says it is loaded along. */
  private Optional<Axis> load(TomlTable table) {
    try {
      return word(table, LOAD).map(text -> LoadAxis.read(text, TomlText.place(file, table, LOAD)));
    } catch (InputException e) {
      faults.addAll(e.faults());
      return Optional.empty();
    }
  }

  private boolean isPlaceKey(String kind, String key) {
    return (fit.isPresent() || isUnsolved) && TruckFill.isPlaceKey(kind, key);
  }

  private Optional<String> word(TomlTable table, String key) {
    Object value = table.get(List.of(key));
    if (value == null || value instanceof String) {
      return Optional.ofNullable((String) value);
    }
    Origin where = TomlText.place(file, table, key);
    faults.add(Fault.of("", key + " is " + TomlText.noun(value) + " (" + where.words() + "), not a text",
        "Write it in quotes.", where));
    return Optional.empty();
  }

  private List<Variants> variants(TomlTable table, ParamSpec<?> spec, String kind) {
    for (String key : table.keySet()) {
      if (!OWN.contains(key) && !isPlaceKey(kind, key) && spec.find(key).isEmpty()) {
        faults.add(spec.unknown("", key, TomlText.place(file, table, key)));
      }
    }
    List<Variants> variants = new ArrayList<>();
    for (Parameter parameter : spec.parameters()) {
      Object value = table.get(List.of(parameter.key()));
      Optional<Variants> read = value == null ? defaults.find(parameter)
          : Variants.read(parameter, value, TomlText.place(file, table, parameter.key()), file, faults);
      read.ifPresent(variants::add);
    }
    return variants;
  }

  private <P extends Record> List<Request<?>> expand(String name, Accessory<P> accessory, ParamSpec<P> spec,
      List<Variants> variants, Origin where) {
    long count = 1;
    for (Variants v : variants) {
      count = Math.min(count * v.values().size(), Integer.MAX_VALUE);
    }
    if (count > PlanReader.MOST_PARTS) {
      faults.add(Fault.of(name, "its lists make " + count + " parts (" + where.words()
          + "), above the maximum of " + PlanReader.MOST_PARTS + " a plan", "Shorten a list or split the plan.", where));
      return List.of();
    }
    List<Named<P>> parts = List.of(new Named<>(name, optional(ParamValues.of(spec))));
    for (Variants v : variants) {
      parts = times(parts, v);
    }
    List<Request<?>> requests = new ArrayList<>();
    for (Named<P> part : parts) {
      requests.add(new Request<>(part.name(), accessory, part.values(), where));
    }
    return requests;
  }

  private <P extends Record> ParamValues<P> optional(ParamValues<P> values) {
    ParamValues<P> more = values;
    for (Parameter parameter : values.spec().parameters()) {
      if (options.containsKey(parameter.key())) {
        more = more.with(parameter.key(), options.get(parameter.key()));
      }
    }
    return more;
  }

  private record Named<P extends Record>(String name, ParamValues<P> values) {}

  private static <P extends Record> List<Named<P>> times(List<Named<P>> parts, Variants variants) {
    List<Named<P>> more = new ArrayList<>();
    for (Named<P> part : parts) {
      for (Given given : variants.values()) {
        String name = variants.several()
            ? part.name() + "-" + variants.key() + "-" + Names.slug(String.join("-", given.texts())) : part.name();
        more.add(new Named<>(name, part.values().with(variants.key(), given)));
      }
    }
    return more;
  }
}
