package outrigger.generator.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.generator.run.Json;
import outrigger.presets.Item;
import outrigger.presets.Shelf;
import outrigger.presets.Source;
import outrigger.presets.Sourced;
import outrigger.presets.TableInfo;
import picocli.CommandLine;

/** {@code presets [TABLE]}: what is on the shelf. */
@CommandLine.Command(name = "presets", sortOptions = false, header = "Show the preset tables, or one of them.")
final class PresetsCommand implements Command {
  private final Root root;

  @CommandLine.Parameters(paramLabel = "TABLE", arity = "0..1", description = "A table, such as disc-magnets.")
  private String table = "";

  @CommandLine.Option(names = "--sources", description = "Tell where each value comes from.")
  private boolean sources;

  PresetsCommand(Root root) {
    this.root = root;
  }

  @Override
  public int run(Console console) {
    Shelf shelf = root.shelf();
    if (table.isEmpty()) {
      listTables(console, shelf);
      return Exit.DONE;
    }
    List<String> keys = shelf.tables().stream().map(TableInfo::key).toList();
    TableInfo info = shelf.tables().stream().filter(t -> t.key().equalsIgnoreCase(table)).findFirst()
        .orElseThrow(() -> new InputException(Fault.of("outrigger presets", "there is no table " + Texts.quoted(table),
            NearMiss.advice(table, keys), Origin.option("TABLE"))));
    if (console.json()) {
      console.json(Exit.DONE, json -> tableJson(json, shelf, info));
    } else {
      print(console, shelf, info);
    }
    return Exit.DONE;
  }

  private void listTables(Console console, Shelf shelf) {
    if (console.json()) {
      console.json(Exit.DONE, json -> json.objects("tables", shelf.tables(), (one, t) -> tableJson(one, shelf, t)));
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("table", "rows", "what it holds"));
    for (TableInfo info : shelf.tables()) {
      rows.add(List.of(info.key(), String.valueOf(shelf.names(info.type()).size()), info.title()));
    }
    AlignedTable.lines(rows).forEach(console::line);
    if (sources) {
      for (TableInfo info : shelf.tables()) {
        console.line("");
        print(console, shelf, info);
      }
    }
  }

  private void print(Console console, Shelf shelf, TableInfo info) {
    console.line(info.title() + ". " + shelf.about(info.type()));
    console.line("");
    List<List<String>> rows = new ArrayList<>();
    for (Item item : shelf.items(info.type())) {
      List<Sourced> values = shelf.sources(item);
      if (rows.isEmpty()) {
        rows.add(Stream.concat(Stream.of("name"), values.stream().filter(PresetsCommand::isShown)
            .map(v -> v.unit().isEmpty() ? v.column() : v.column() + " " + v.unit())).toList());
      }
      rows.add(Stream.concat(Stream.of(item.name()), values.stream().filter(PresetsCommand::isShown)
          .map(Sourced::value)).toList());
    }
    AlignedTable.lines(rows.isEmpty() ? List.of(List.of("name")) : rows).forEach(console::line);
    if (sources) {
      printSources(console, shelf, info);
    }
  }

  private static boolean isShown(Sourced value) {
    return !value.column().equals("name");
  }

  /** Each source once, with the rows and columns it stands for; columns of the same rows share a line. */
  private static void printSources(Console console, Shelf shelf, TableInfo info) {
    Map<Source, Map<String, List<String>>> uses = new LinkedHashMap<>();
    for (Item item : shelf.items(info.type())) {
      for (Sourced value : shelf.sources(item)) {
        if (isShown(value)) {
          uses.computeIfAbsent(value.source(), s -> new LinkedHashMap<>())
              .computeIfAbsent(value.column(), c -> new ArrayList<>()).add(item.name());
        }
      }
    }
    int rows = shelf.names(info.type()).size();
    console.line("");
    console.line("Sources");
    uses.forEach((source, rowsOfColumns) -> {
      console.line("  " + Texts.choice(source.kind()).replace('-', ' ') + ": " + source.text());
      Map<List<String>, List<String>> columnsOfRows = new LinkedHashMap<>();
      rowsOfColumns.forEach((column, names) -> columnsOfRows.computeIfAbsent(names, n -> new ArrayList<>()).add(column));
      columnsOfRows.forEach((names, columns) -> console.line("    " + String.join(", ", columns)
          + (names.size() == rows ? "" : " of " + String.join(", ", names))));
    });
  }

  private void tableJson(Json json, Shelf shelf, TableInfo info) throws IOException {
    json.put("table", info.key()).put("title", info.title()).put("about", shelf.about(info.type()));
    json.objects("rows", shelf.items(info.type()), (row, item) -> {
      row.put("name", item.name());
      row.objects("values", shelf.sources(item).stream().filter(PresetsCommand::isShown).toList(), this::valueJson);
    });
  }

  private void valueJson(Json json, Sourced value) throws IOException {
    json.put("column", value.column()).put("value", value.value());
    if (!value.unit().isEmpty()) {
      json.put("unit", value.unit());
    }
    if (sources) {
      json.put("standing", Texts.choice(value.source().kind())).put("source", value.source().text());
    }
  }
}
