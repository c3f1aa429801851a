package outrigger.presets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The tables that come with the program, each read from its resource when first asked for. */
final class StandardTables {
  private static final Map<TableSpec<?>, Table<?>> READ = new ConcurrentHashMap<>();

  private StandardTables() {}

  static Table<?> get(TableSpec<?> spec) {
    Table<?> known = READ.get(spec);
    return known != null ? known : READ.computeIfAbsent(spec, StandardTables::read);
  }

  private static Table<?> read(TableSpec<?> spec) {
    String file = spec.key() + ".toml";
    try {
      Table<?> table = new TableFile(file, text(file)).readPlain(SourceBook::standard, Table::empty).get(spec);
      if (table == null) {
        throw new IllegalStateException(file + " has no section " + spec.key());
      }
      return table;
    } catch (PresetFileException ours) {
      throw new IllegalStateException("A table that comes with the program is faulty: " + ours.getMessage(), ours);
    }
  }

  static String text(String file) {
    try (InputStream in = StandardTables.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("The table " + file + " is missing from the program.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new IllegalStateException("The table " + file + " cannot be read.", unreadable);
    }
  }
}
