package outrigger.presets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a table is: its columns, in the order of the record's components, and how a record is made of a row.
 *
 * @param key key in files and on the command line, such as {@code disc-magnets}
 * @param title heading
 * @param type record of its items
 * @param columns its columns, {@code name} first
 * @param maker makes the record; throws {@link IllegalArgumentException} where values do not go together
 */
record TableSpec<T extends Item>(String key, String title, Class<T> type, List<Column> columns,
    Function<Cells, T> maker) {
  Optional<Column> column(String name) {
    return columns.stream().filter(column -> column.name().equals(name)).findFirst();
  }

  List<String> columnNames() {
    List<String> names = new ArrayList<>();
    for (Column column : columns) {
      names.add(column.name());
    }
    return names;
  }

  /** Tables are told apart by key. Written out: the hash code made up at run time takes longer than reading a table. */
  @Override
  public boolean equals(Object other) {
    return other instanceof TableSpec<?> spec && key.equals(spec.key);
  }

  @Override
  public int hashCode() {
    return key.hashCode();
  }

  TableInfo info() {
    return new TableInfo(key, title, type);
  }
}
