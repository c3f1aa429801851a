package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.generator.magnet.Force;
import outrigger.generator.magnet.Hold;

/** Pull over the gap, as a table with a bar for each row. */
final class HoldTable {
  private static final int WIDEST_BAR = 40;

  private HoldTable() {}

  /** Bars of {@code #} up to what is counted on of the weakest magnets, {@code -} up to the ordinary pull. */
  static List<String> lines(Hold hold) {
    List<Double> gaps = hold.tableGaps();
    List<Force> forces = gaps.stream().map(hold.pull()::at).toList();
    double most = forces.stream().mapToDouble(Force::middle).max().orElseThrow();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("gap mm", "weakest N", "pull N", "strongest N", "counted on N", "# counted on, - pull"));
    for (int i = 0; i < gaps.size(); i++) {
      Force force = forces.get(i);
      double counted = hold.given().derating() * force.least();
      boolean printed = gaps.get(i) == hold.gap().nominal();
      rows.add(List.of(String.format(Locale.ROOT, "%.3f", gaps.get(i)), HoldReport.number(force.least()),
          HoldReport.number(force.middle()), HoldReport.number(force.greatest()), HoldReport.number(counted),
          bar(counted, force.middle(), most) + (printed ? " < printed gap" : "")));
    }
    return AlignedTable.lines(rows);
  }

  private static String bar(double counted, double pull, double most) {
    int whole = (int) Math.round(WIDEST_BAR * pull / most);
    int solid = Math.min(whole, (int) Math.round(WIDEST_BAR * counted / most));
    return "#".repeat(solid) + "-".repeat(whole - solid);
  }
}
