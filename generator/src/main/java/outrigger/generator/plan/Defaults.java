package outrigger.generator.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.Set;
import org.tomlj.TomlTable;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.Fault;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;
import outrigger.generator.param.Texts;

/** Parameters a plan gives to every part that has them: its top keys for all parts, and its table of defaults. */
final class Defaults {
  private record Entry(Object value, Origin where) {}

  private final String file;
  private final List<Fault> faults;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  Defaults(String file, List<Fault> faults) {
    this.file = file;
    this.faults = faults;
  }

  /** Takes a value given at the top of the plan. */
  void top(TomlTable plan, String key) {
    if (plan.contains(List.of(key))) {
      entries.put(key, new Entry(plan.get(List.of(key)), TomlText.place(file, plan, key)));
    }
  }

  /** Takes the plan's table of defaults. */
  void table(TomlTable table, Kinds kinds) {
    Set<String> known = new TreeSet<>();
    for (Accessory<?> accessory : kinds.all()) {
      known.addAll(ParamSpec.of(accessory.parameters()).keys());
    }
    for (String key : table.keySet()) {
      Origin where = TomlText.place(file, table, key);
      Entry before = entries.put(key, new Entry(table.get(List.of(key)), where));
      if (before != null) {
        faults.add(new Fault("defaults", key, key + " is given twice (" + where.words() + "; first "
            + before.where().words() + ")", "", "", "Leave one out.", where));
      }
      if (!known.contains(key)) {
        faults.add(new Fault("defaults", key, "no kind has a parameter " + Texts.quoted(key) + " (" + where.words()
            + ")", "", "", NearMiss.advice(key, known), where));
      }
    }
  }

  /** What the plan gives a parameter for all parts. */
  Optional<Variants> find(Parameter parameter) {
    Entry entry = entries.get(parameter.key());
    return entry == null ? Optional.empty()
        : Variants.read(parameter, entry.value(), entry.where(), file, faults);
  }
}
