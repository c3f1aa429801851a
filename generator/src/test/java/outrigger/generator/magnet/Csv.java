package outrigger.generator.magnet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a table of reference values beside the tests; lines that begin with a hash say where they come from. */
final class Csv {
  private final Map<String, String> cells;

  private Csv(Map<String, String> cells) {
    this.cells = cells;
  }

  static List<Csv> rows(String file) {
    try (InputStream in = Csv.class.getResourceAsStream(file)) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
          .filter(line -> !line.startsWith("#")).toList();
      String[] heads = lines.get(0).split(",", -1);
      List<Csv> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        String[] values = line.split(",", -1);
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < heads.length; i++) {
          cells.put(heads[i], values[i]);
        }
        rows.add(new Csv(cells));
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String text(String column) {
    return cells.get(column);
  }

  double number(String column) {
    return Double.parseDouble(cells.get(column));
  }

  @Override
  public String toString() {
    return cells.toString();
  }
}
