package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.generator.truck.BetweenParams;
import outrigger.generator.truck.BodyParams;
import outrigger.generator.truck.BumperParams;
import outrigger.generator.truck.DriveParams;
import outrigger.generator.truck.HoleRow;
import outrigger.generator.truck.ItemParams;
import outrigger.generator.truck.KeepOut;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.RailAt;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.Tables;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.generator.truck.TruckParams;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;

/** Reads the tables of a plan that describe the truck; every fault is added to those of the plan. */
final class TruckReader {
  /** Most tables of one key, so that nothing downstream takes for ever. */
  private static final int MOST = 60;

  private final String file;
  private final TomlTable toml;
  private final Shelf shelf;
  private final List<Fault> faults;

  TruckReader(String file, TomlTable toml, Shelf shelf, List<Fault> faults) {
    this.file = file;
    this.toml = toml;
    this.shelf = shelf;
    this.faults = faults;
  }

  /**
   * The truck, if the plan describes one and nothing is at fault of what the rest stands on: rails, body and mounts. A table
   * of another kind that is at fault is left out of it.
   */
  Optional<Truck> read(Optional<Given> printer) {
    if (Tables.keys().stream().noneMatch(key -> toml.contains(List.of(key)))) {
      return Optional.empty();
    }
    int before = faults.size();
    List<Told<TruckParams>> truck = one("truck", TruckParams.class);
    List<Told<RailParams>> rail = one("rail", RailParams.class);
    List<Told<RailAt>> places = all("rail-at", RailAt.class);
    List<Told<BodyParams>> body = one("body", BodyParams.class);
    List<Told<MountParams>> mounts = all("mount", MountParams.class);
    TruckChecks checks = new TruckChecks(faults);
    checks.check(rail, places, mounts);
    boolean stands = faults.size() == before;
    List<Told<HoleRow>> holes = all("holes", HoleRow.class);
    List<Told<KeepOut>> keepOuts = all("keep-out", KeepOut.class);
    List<Told<BumperParams>> bumper = all("bumper", BumperParams.class);
    List<Told<ItemParams>> items = all("item", ItemParams.class);
    List<Told<BetweenParams>> between = all(BetweenParams.KEY, BetweenParams.class);
    List<Told<DriveParams>> drive = all("drive", DriveParams.class);
    checks.items(items);
    Optional<Printer> made = printer(printer);
    if (!stands || made.isEmpty()) {
      return Optional.empty();
    }
    Rails rails = Rails.of(rail.get(0).record(), places.stream().map(Told::record).toList());
    return Optional.of(new Truck(truck.get(0), rail.get(0), rails, holes, mounts, body.get(0), keepOuts,
        bumper.stream().findFirst(), items, between.stream().findFirst(), drive.stream().findFirst(), made.get()));
  }

  /** The printer, if there is one of that name; that there is none, each part tells. */
  private Optional<Printer> printer(Optional<Given> given) {
    return shelf.find(Printer.class, given.map(Given::text).orElse("demo-0.4"));
  }

  /** The table of a key, at its defaults where it is left out; empty where it is at fault. */
  private <R extends Record> List<Told<R>> one(String key, Class<R> type) {
    if (!toml.contains(List.of(key))) {
      ParamValues<R> defaults = ParamValues.of(ParamSpec.of(type));
      return List.of(new Told<>(key, defaults.resolve(key, shelf).record(), defaults, Origin.file(file)));
    }
    return all(key, type);
  }

  private <R extends Record> List<Told<R>> all(String key, Class<R> type) {
    Tables.Declared declared = Tables.find(key).orElseThrow();
    Object value = toml.get(List.of(key));
    if (value == null) {
      return List.of();
    }
    Origin where = TomlText.place(file, toml, key);
    if (declared.isMany() && value instanceof TomlArray array) {
      return many(declared, array, type);
    }
    if (!declared.isMany() && value instanceof TomlTable table) {
      return told(key, table, where, type).map(List::of).orElse(List.of());
    }
    faults.add(new Fault("", key, key + " is " + TomlText.noun(value) + " (" + where.words() + ")", "", "",
        "Begin it with a line " + declared.heading() + ".", where));
    return List.of();
  }

  private <R extends Record> List<Told<R>> many(Tables.Declared declared, TomlArray array, Class<R> type) {
    List<Told<R>> all = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      Origin where = TomlText.place(file, array, i);
      if (i == MOST) {
        faults.add(new Fault("", declared.key(), "there are " + array.size() + " tables " + declared.heading() + " ("
            + where.words() + "), above the maximum of " + MOST, "", "at most " + MOST, "Leave some out.", where));
        return all;
      }
      if (array.get(i) instanceof TomlTable table) {
        told(declared.key(), table, where, type).ifPresent(all::add);
      } else {
        faults.add(new Fault("", declared.key(), declared.key() + " is " + TomlText.noun(array.get(i)) + " ("
            + where.words() + ")", "", "", "Begin each with a line " + declared.heading() + ".", where));
      }
    }
    return all;
  }

  private <R extends Record> Optional<Told<R>> told(String key, TomlTable table, Origin where, Class<R> type) {
    ParamSpec<R> spec = ParamSpec.of(type);
    String subject = table.get(List.of("name")) instanceof String name && spec.find("name").isPresent()
        ? key + " " + name : key;
    int before = faults.size();
    for (String given : table.keySet()) {
      if (spec.find(given).isEmpty()) {
        faults.add(spec.unknown(subject, given, TomlText.place(file, table, given)));
      }
    }
    ParamValues<R> values = ParamValues.of(spec);
    for (Map.Entry<String, Given> given : given(spec, table, subject).entrySet()) {
      values = values.with(given.getKey(), given.getValue());
    }
    try {
      R record = values.resolve(subject, shelf).record();
      return faults.size() > before ? Optional.empty() : Optional.of(new Told<>(subject, record, values, where));
    } catch (InputException e) {
      e.faults().forEach(fault -> faults.add(at(fault, where)));
      return Optional.empty();
    }
  }

  private Map<String, Given> given(ParamSpec<?> spec, TomlTable table, String subject) {
    Map<String, Given> all = new java.util.LinkedHashMap<>();
    for (Parameter parameter : spec.parameters()) {
      Object value = table.get(List.of(parameter.key()));
      if (value == null) {
        continue;
      }
      Origin where = TomlText.place(file, table, parameter.key());
      List<Fault> bad = new ArrayList<>();
      Optional<Variants> read = Variants.read(parameter, value, where, file, bad);
      bad.forEach(fault -> faults.add(fault.about(subject)));
      if (read.isPresent() && read.get().several()) {
        faults.add(new Fault(subject, parameter.key(), parameter.key() + " is a list (" + where.words()
            + "), and takes one value", "", "one value", "Give one value, or one table for each.", where));
      } else {
        read.ifPresent(variants -> all.put(parameter.key(), variants.values().get(0)));
      }
    }
    return all;
  }

  private static Fault at(Fault fault, Origin table) {
    return fault.where().kind() != Origin.Kind.DEFAULT ? fault : new Fault(fault.subject(), fault.parameter(),
        fault.what() + " (" + table.words() + ")", fault.value(), fault.limit(), fault.advice(), table);
  }
}
