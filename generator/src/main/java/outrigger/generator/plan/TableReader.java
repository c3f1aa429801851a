package outrigger.generator.plan;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlTable;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.presets.Shelf;

/** Reads a table of a plan into a record whose components carry {@code @Param}. */
final class TableReader {
  private final String file;
  private final Shelf shelf;
  private final List<Fault> faults;

  TableReader(String file, Shelf shelf, List<Fault> faults) {
    this.file = file;
    this.shelf = shelf;
    this.faults = faults;
  }

  /**
   * The record, or none where the table has a fault, which is noted.
   *
   * @param subject what messages begin with
   */
  <R extends Record> Optional<R> read(TomlTable table, Class<R> type, String subject) {
    int before = faults.size();
    ParamSpec<R> spec = ParamSpec.of(type);
    ParamValues<R> values = ParamValues.of(spec);
    for (String key : table.keySet()) {
      Optional<Parameter> parameter = spec.find(key);
      if (parameter.isEmpty()) {
        faults.add(spec.unknown(subject, key, TomlText.place(file, table, key)));
        continue;
      }
      Optional<Variants> given = Variants.read(parameter.get(), table.get(List.of(key)),
          TomlText.place(file, table, key), file, faults);
      if (given.isPresent() && given.get().several()) {
        faults.add(new Fault(subject, key, key + " is a list (" + TomlText.place(file, table, key).words()
            + "), where one value is expected", "", "", "Give one value.", TomlText.place(file, table, key)));
      } else if (given.isPresent()) {
        values = values.with(key, given.get().values().get(0));
      }
    }
    try {
      R record = values.resolve(subject, shelf).record();
      return faults.size() > before ? Optional.empty() : Optional.of(record);
    } catch (InputException e) {
      faults.addAll(e.faults());
      return Optional.empty();
    }
  }
}
