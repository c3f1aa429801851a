package outrigger.presets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the section of one table and lays its rows over those already known. */
final class TableReader<T extends Item> {
  private static final List<String> KEYS = List.of("about", "units", SourceRules.ALL, SourceRules.COLUMN, "row");

  private final TableSpec<T> spec;
  private final Table<T> base;
  private final Node section;
  private final SourceBook book;
  private final Faults faults;
  private final Map<String, Table.Entry<T>> entries;
  private final Map<String, TomlPosition> seen = new HashMap<>();
  private final List<String> columns;
  /** What may stand in a row: its columns, and where their values come from. */
  private final List<String> known;

  TableReader(Table<T> base, Node section, SourceBook book) {
    this.spec = base.spec();
    this.base = base;
    this.section = section;
    this.book = book;
    this.faults = section.faults();
    this.entries = new LinkedHashMap<>(base.entries());
    this.columns = spec.columnNames();
    this.known = new ArrayList<>(columns);
    known.add(SourceRules.ALL);
    known.add(SourceRules.COLUMN);
  }

  /** The table with all rows that are sound; the rest has become faults. */
  Table<T> read() {
    section.refuseOthers(KEYS, "key");
    SourceRules rules = SourceRules.read(section, columns, book);
    Map<String, String> units = units();
    for (Node row : rows()) {
      readRow(row, units, rules);
    }
    return new Table<>(spec, section.text("about").orElse(base.about()), entries);
  }

  private List<Node> rows() {
    List<Node> rows = new ArrayList<>();
    if (!section.has("row")) {
      return rows;
    }
    if (!(section.value("row") instanceof TomlArray list)) {
      section.fault("row", "row is " + Node.shown(section.value("row")) + ". Write each row under [[" + spec.key()
          + ".row]].");
      return rows;
    }
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i) instanceof TomlTable table) {
        String called = table.get(List.of("name")) instanceof String name ? " " + Quote.of(name) : " row " + (i + 1);
        rows.add(new Node(table, list.inputPositionOf(i), spec.key() + called, faults));
      } else {
        faults.add(list.inputPositionOf(i), spec.key() + ": row " + (i + 1) + " is " + Node.shown(list.get(i))
            + ". Write each row under [[" + spec.key() + ".row]].");
      }
    }
    return rows;
  }

  /** Units of plain numbers by column: those the section gives, otherwise those of the columns. */
  private Map<String, String> units() {
    Map<String, String> units = new TreeMap<>();
    for (Column column : spec.columns()) {
      units.put(column.name(), column.unit());
    }
    Optional<Node> given = section.child("units", spec.key() + " units");
    if (given.isPresent()) {
      given.get().refuseOthers(columns, "column");
      for (Column column : spec.columns()) {
        Optional<String> unit = given.get().text(column.name());
        if (unit.isPresent()) {
          putUnit(units, given.get(), column, unit.get());
        }
      }
    }
    return units;
  }

  private static void putUnit(Map<String, String> units, Node given, Column column, String unit) {
    if (unit.equals(column.unit()) || column.isLength() && LengthText.isUnit(unit)) {
      units.put(column.name(), unit);
    } else {
      given.fault(column.name(), "unit of " + column.name() + " is " + Quote.of(unit) + ". " + unitsWanted(column));
    }
  }

  private static String unitsWanted(Column column) {
    if (column.isLength()) {
      return "Use mm, in or thou.";
    }
    return column.unit().isEmpty() ? "It has no unit; leave it out." : "Use " + column.unit() + ".";
  }

  private void readRow(Node row, Map<String, String> units, SourceRules tableRules) {
    row.refuseOthers(known, "column");
    SourceRules rules = SourceRules.read(row, columns, book);
    Map<String, Datum> data = new HashMap<>();
    Map<String, Source> sources = new HashMap<>();
    for (Column column : spec.columns()) {
      if (row.has(column.name())) {
        Optional<Datum> datum = new ValueReader(row, column, units.get(column.name())).read();
        if (datum.isPresent()) {
          data.put(column.name(), datum.get());
        }
        Optional<Source> source = rules.find(column.name(), tableRules, book);
        if (source.isPresent()) {
          sources.put(column.name(), source.get());
        } else {
          row.fault(column.name(), column.name() + " has no source. Name one by source or source-of.");
        }
      }
    }
    keep(row, new Row(data, sources));
  }

  private void keep(Node row, Row given) {
    if (!row.has("name")) {
      faults.add(row.at(),
          row.called() + ": name is missing. Give the name of a known row to change it, or a new one.");
      return;
    }
    if (!(given.data().get("name") instanceof Datum.Text name)) {
      return;
    }
    String key = Table.key(name.text());
    TomlPosition first = seen.putIfAbsent(key, row.at());
    if (first != null) {
      faults.add(row.at(), row.called() + ": this row stands already in line " + first.line()
          + ". Keep one of the two.");
      return;
    }
    Optional<Table.Entry<T>> old = base.find(name.text());
    Row full = old.isPresent() ? old.get().row().with(given) : given;
    if (isComplete(row, full) && isSound(row, given)) {
      Optional<T> item = make(row, full);
      if (item.isPresent()) {
        entries.put(key, new Table.Entry<>(item.get(), full));
      }
    }
  }

  /** A column that is given but faulty is told already; what the old value in its place would do is no news. */
  private boolean isSound(Node row, Row given) {
    for (String column : columns) {
      if (row.has(column) && !given.data().containsKey(column)) {
        return false;
      }
    }
    return true;
  }

  /** Whether every column has a value; a column neither given nor known is a fault. */
  private boolean isComplete(Node row, Row full) {
    List<String> missing = new ArrayList<>();
    for (String column : columns) {
      if (!full.data().containsKey(column) && !row.has(column)) {
        missing.add(column);
      }
    }
    if (!missing.isEmpty()) {
      String name = ((Datum.Text) full.data().get("name")).text();
      faults.add(row.at(), row.called() + ": a row of a new name must give every column, and " + Words.and(missing)
          + (missing.size() == 1 ? " is" : " are") + " missing. " + NearNames.hint(name, base.names())
          + "Add what is missing, or use the name of a known row.");
    }
    return missing.isEmpty();
  }

  private Optional<T> make(Node row, Row full) {
    try {
      return Optional.of(spec.maker().apply(new Cells(full.data())));
    } catch (IllegalArgumentException apart) {
      faults.add(row.at(), row.called() + ": " + apart.getMessage());
      return Optional.empty();
    }
  }
}
