package outrigger.presets;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The items of one table in file order, found by name whatever its case. */
final class Table<T extends Item> {
  private final TableSpec<T> spec;
  private final String about;
  private final Map<String, Entry<T>> entries;

  /** An item and the row it was made of. */
  record Entry<T extends Item>(T item, Row row) {}

  Table(TableSpec<T> spec, String about, Map<String, Entry<T>> entries) {
    this.spec = spec;
    this.about = about;
    this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }

  static <T extends Item> Table<T> empty(TableSpec<T> spec) {
    return new Table<>(spec, "", Map.of());
  }

  static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  TableSpec<T> spec() {
    return spec;
  }

  String about() {
    return about;
  }

  Map<String, Entry<T>> entries() {
    return entries;
  }

  Optional<Entry<T>> find(String name) {
    return Optional.ofNullable(entries.get(key(name)));
  }

  List<T> items() {
    return entries.values().stream().map(Entry::item).toList();
  }

  List<String> names() {
    return items().stream().map(Item::name).toList();
  }

  /** The values of an item as they are printed, in column order. */
  List<Sourced> sourced(Entry<T> entry) {
    return spec.columns().stream().map(column -> new Sourced(column.name(),
        entry.row().data().get(column.name()).print(), column.unit(),
        entry.row().sources().get(column.name()))).toList();
  }
}
