package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells as lines with aligned columns: numbers to the right, words to the left. */
final class AlignedTable {
  private static final String GAP = "  ";

  private AlignedTable() {}

  /** @param rows all of one length, the heading first */
  static List<String> lines(List<List<String>> rows) {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    boolean[] right = new boolean[columns];
    for (int c = 0; c < columns; c++) {
      int column = c;
      widths[c] = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
      right[c] = rows.size() > 1 && rows.stream().skip(1).allMatch(row -> isNumber(row.get(column)));
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < columns; c++) {
        String padding = " ".repeat(widths[c] - row.get(c).length());
        line.append(c == 0 ? "" : GAP).append(right[c] ? padding + row.get(c) : row.get(c) + padding);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static boolean isNumber(String cell) {
    return cell.matches("-?[0-9]+(\\.[0-9]+)?( [a-zA-Z0-9]+)?");
  }
}
