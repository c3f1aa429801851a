package outrigger.generator.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tomlj.TomlTable;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.print.LimitTexts;
import outrigger.shapes.print.Limit;

/** Limits of printing that a plan sets for one part, such as {@code limits = { minimum-wall = 0.8 }}. */
final class LimitTable {
  private LimitTable() {}

  /** The limits under a key of a part; faults are added to the list. */
  static Map<Limit, Double> read(String file, TomlTable part, String key, List<Fault> faults) {
    Map<Limit, Double> limits = new EnumMap<>(Limit.class);
    Object value = part.get(List.of(key));
    if (value instanceof TomlTable table) {
      for (String name : table.keySet()) {
        one(name, table.get(List.of(name)), TomlText.place(file, table, name), limits, faults);
      }
    } else if (value != null) {
      Origin where = TomlText.place(file, part, key);
      faults.add(Fault.of("", key + " is " + TomlText.noun(value) + " (" + where.words() + "), not a table",
          "Write it such as limits = { minimum-wall = 0.8 }.", where));
    }
    return limits;
  }

  private static void one(String name, Object value, Origin where, Map<Limit, Double> limits, List<Fault> faults) {
    try {
      LimitTexts.read(name, TomlText.text(value).orElse(TomlText.noun(value)), where, limits);
    } catch (InputException e) {
      faults.addAll(e.faults());
    }
  }
}
