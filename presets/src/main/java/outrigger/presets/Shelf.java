package outrigger.presets;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every table of presets. Immutable; the tables that come with the program are read one by one, when first asked for.
 */
public final class Shelf {
  private static final Shelf STANDARD = new Shelf(Map.of());

  private final Map<TableSpec<?>, Table<?>> laidOver;

  private Shelf(Map<TableSpec<?>, Table<?>> laidOver) {
    this.laidOver = Map.copyOf(laidOver);
  }

  /** The tables that come with the program. */
  public static Shelf standard() {
    return STANDARD;
  }

  /**
   * This shelf with a table file of the user laid over it: a row of a known name changes the values it gives, a row of
   * a new name is added to the end of its table. {@code docs/presets.md} describes the file.
   *
   * @throws PresetFileException if the file cannot be read or used, with everything that is wrong with it
   */
  public Shelf with(Path file) {
    return withText(file.toString(), FileText.read(file));
  }

  /**
   * The same with the text of a table file.
   *
   * @param called what messages call it
   * @throws PresetFileException if the text cannot be used, with everything that is wrong with it
   */
  public Shelf withText(String called, String text) {
    Map<TableSpec<?>, Table<?>> tables = new HashMap<>(laidOver);
    tables.putAll(new TableFile(called, text).read(root -> SourceBook.user(root, called), this::table));
    return new Shelf(tables);
  }

  /**
   * The item of a table by name, whatever the case of its letters.
   *
   * @throws UnknownPreset if the table has no item of that name
   * @throws IllegalArgumentException if there is no table of such records
   */
  public <T extends Item> T get(Class<T> table, String name) {
    return find(table, name)
        .orElseThrow(() -> new UnknownPreset(Tables.of(table).key(), name, names(table)));
  }

  /** The item of a table by name, whatever the case of its letters, if there is one. */
  public <T extends Item> Optional<T> find(Class<T> table, String name) {
    return table(table).find(name).map(Table.Entry::item);
  }

  /** All names of a table in file order. */
  public <T extends Item> List<String> names(Class<T> table) {
    return table(table).names();
  }

  /** All items of a table in file order. */
  public <T extends Item> List<T> items(Class<T> table) {
    return table(table).items();
  }

  /** What a table holds and how far to trust it, in a sentence or two. */
  public <T extends Item> String about(Class<T> table) {
    return table(table).about();
  }

  /** The tables there are, in the order to list them; reads none of them. */
  public List<TableInfo> tables() {
    return Tables.ALL.stream().<TableInfo>map(TableSpec::info).toList();
  }

  /**
   * The table of a key such as {@code disc-magnets}.
   *
   * @throws UnknownPreset if there is no such table
   */
  public TableInfo table(String key) {
    return tables().stream().filter(info -> info.key().equals(Table.key(key))).findFirst()
        .orElseThrow(() -> new UnknownPreset("tables", key, Tables.keys()));
  }

  /**
   * The values of an item of this shelf in column order, ready to print, each with its source.
   *
   * @throws UnknownPreset if its table holds no item of that name
   */
  public List<Sourced> sources(Item item) {
    return sourced(table(item.getClass()), item.name());
  }

  private static <T extends Item> List<Sourced> sourced(Table<T> table, String name) {
    return table.find(name).map(table::sourced)
        .orElseThrow(() -> new UnknownPreset(table.spec().key(), name, table.names()));
  }

  @SuppressWarnings("unchecked")
  private <T extends Item> Table<T> table(Class<T> type) {
    return (Table<T>) table(Tables.of(type));
  }

  private Table<?> table(TableSpec<?> spec) {
    Table<?> laid = laidOver.get(spec);
    return laid != null ? laid : StandardTables.get(spec);
  }
}
