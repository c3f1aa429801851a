package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import outrigger.generator.layout.Arranger;
import outrigger.generator.layout.RailsRoom;
import outrigger.generator.layout.Room;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.presets.Shelf;

/** Reads what a truck must carry, and the space between its rails. */
final class CargoReader {
  static final String ITEM = "item";
  static final String BETWEEN = RailsRoom.NAME;

  private final String file;
  private final TomlTable toml;
  private final TableReader tables;
  private final List<Fault> faults;

  CargoReader(String file, TomlTable toml, Shelf shelf, List<Fault> faults) {
    this.file = file;
    this.toml = toml;
    this.tables = new TableReader(file, shelf, faults);
    this.faults = faults;
  }

  Cargo read() {
    return new Cargo(items(), betweenRails());
  }

  private Optional<Room> betweenRails() {
    Object value = toml.get(List.of(BETWEEN));
    if (value instanceof TomlTable table) {
      return tables.read(table, RailsRoom.class, BETWEEN).flatMap(RailsRoom::room);
    }
    if (value != null) {
      fault(BETWEEN + " is no table", "Begin it with a line [" + BETWEEN + "].", TomlText.place(file, toml, BETWEEN));
    }
    return Optional.empty();
  }

  private List<Cargo.Wanted> items() {
    List<Cargo.Wanted> items = new ArrayList<>();
    Object value = toml.get(List.of(ITEM));
    if (value == null) {
      return items;
    }
    if (!(value instanceof TomlArray array)) {
      fault(ITEM + " is no list of tables", "Begin each item with a line [[item]].", TomlText.place(file, toml, ITEM));
      return items;
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < array.size(); i++) {
      Origin where = TomlText.place(file, array, i);
      if (array.get(i) instanceof TomlTable table) {
        tables.read(table, ItemParams.class, ITEM).map(ItemParams::item).ifPresent(item -> {
          if (!names.add(item.name())) {
            fault("two items are called " + item.name(), "Give each its own name.", where);
          }
          items.add(new Cargo.Wanted(item, where));
        });
      } else {
        fault("an item is " + TomlText.noun(array.get(i)), "Begin each item with a line [[item]].", where);
      }
    }
    if (items.size() > Arranger.MOST_ITEMS) {
      fault(items.size() + " items are more than the " + Arranger.MOST_ITEMS + " that can be laid out",
          "Name those that lie in one tray as items of that part.", items.get(Arranger.MOST_ITEMS).where());
    }
    return items;
  }

  private void fault(String what, String advice, Origin where) {
    faults.add(Fault.of("", what + " (" + where.words() + ")", advice, where));
  }
}
