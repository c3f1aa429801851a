package outrigger.presets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the text of a table file, which may hold sections for any of the tables. */
final class TableFile {
  private final String file;
  private final String text;
  private final Faults faults;

  /** @param file what to call the file in messages */
  TableFile(String file, String text) {
    this.file = file;
    this.text = text;
    this.faults = new Faults(file);
  }

  /**
   * The tables the file has sections for, laid over those that are known.
   *
   * @param books reads the sources of the file
   * @param known gives the known table of a spec
   * @throws PresetFileException with everything that is wrong
   */
  Map<TableSpec<?>, Table<?>> read(Function<Node, SourceBook> books, Function<TableSpec<?>, Table<?>> known) {
    return read(parse(), books, known);
  }

  /**
   * The same of a file that comes with the program and is written in the part of TOML that {@link PlainToml} reads.
   *
   * @throws IllegalArgumentException where it is not
   */
  Map<TableSpec<?>, Table<?>> readPlain(Function<Node, SourceBook> books, Function<TableSpec<?>, Table<?>> known) {
    return read(PlainToml.read(text), books, known);
  }

  private Map<TableSpec<?>, Table<?>> read(TomlTable parsed, Function<Node, SourceBook> books,
      Function<TableSpec<?>, Table<?>> known) {
    Node root = new Node(parsed, TomlPosition.positionAt(1, 1), "tables", faults);
    SourceBook book = books.apply(root);
    Map<TableSpec<?>, Table<?>> tables = new LinkedHashMap<>();
    for (TableSpec<?> spec : Tables.ALL) {
      Optional<Node> section = root.child(spec.key(), spec.key());
      if (section.isPresent()) {
        tables.put(spec, new TableReader<>(known.apply(spec), section.get(), book).read());
      }
    }
    refuseUnknownTables(root);
    faults.throwIfAny();
    return tables;
  }

  private void refuseUnknownTables(Node root) {
    List<String> tables = Tables.keys();
    for (String key : root.keys()) {
      if (!tables.contains(key) && !key.equals(SourceBook.KEY)) {
        root.fault(key, "there is no table " + Quote.of(key) + ". " + NearNames.hint(key, tables)
            + "Tables are " + Words.and(tables) + ".");
      }
    }
  }

  /** What cannot be parsed is not looked at further: the rest of such a file would be read out of its place. */
  private TomlParseResult parse() {
    try {
      TomlParseResult result = Toml.parse(text);
      result.errors().forEach(error -> faults.add(error.position(), "not TOML here: " + sentence(error.getMessage())));
      faults.throwIfAny();
      return result;
    } catch (StackOverflowError tooDeep) {
      // The parser calls itself once for each level of brackets; no table needs more than a few.
      throw Faults.one(file, Nesting.deepestLine(text), 1,
          "lists or tables are nested too deeply. Write the rows as the guide shows.");
    } catch (AssertionError brokenEscape) {
      // Where assertions are switched on, the parser trips over a backslash it has already listed as an error.
      throw Faults.whole(file, "a text in double quotes has a broken escape. Write \\\\ for a backslash.");
    }
  }

  private static String sentence(String message) {
    String line = String.join(" ", List.of(message.split("\\R")));
    return line.endsWith(".") ? line : line + ".";
  }
}
