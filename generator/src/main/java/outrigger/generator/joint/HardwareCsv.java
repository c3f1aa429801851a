package outrigger.generator.joint;

import java.util.List;
import java.util.stream.Collectors;

/** A list of hardware as CSV (RFC 4180, but line feeds): one line an article, a heading first. */
public final class HardwareCsv {
  /** Name of the file beside print files. */
  public static final String FILE = "hardware.csv";

  private static final List<String> HEADING = List.of("kind", "article", "count", "spares", "on hand", "to buy", "for");

  private HardwareCsv() {}

  /** The whole file. */
  public static String text(HardwareList list) {
    StringBuilder text = new StringBuilder(row(HEADING));
    for (HardwareLine line : list.lines()) {
      text.append(row(List.of(line.kind().word(), line.article(), String.valueOf(line.count()),
          String.valueOf(line.spares()), String.valueOf(line.onHand()), String.valueOf(line.toBuy()),
          String.join("; ", line.uses()))));
    }
    return text.toString();
  }

  private static String row(List<String> cells) {
    return cells.stream().map(HardwareCsv::cell).collect(Collectors.joining(",")) + "\n";
  }

  private static String cell(String text) {
    return text.matches("[^,\"\\r\\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
