package outrigger.generator.print;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Severity;

/** What the gauges found, in lines for a maker. */
public final class PrintWords {
  /** Concerns of one rule told in full; the rest is counted. */
  private static final int TOLD = 5;

  private static final String ISLAND = "island";

  private PrintWords() {}

  /** Everything: a line that sums up, then each concern, fact and thing left out. */
  public static List<String> lines(PrintReport report) {
    List<String> lines = new ArrayList<>();
    lines.add("printing: " + summary(report));
    lines.addAll(concerns(report));
    for (Fact fact : report.facts()) {
      lines.add("  " + fact.words());
    }
    report.notExamined().forEach(reason -> lines.add("  not examined: " + reason));
    return lines;
  }

  /** Such as {@code 1 error, 2 cautions}, or that there is none. */
  public static String summary(PrintReport report) {
    long errors = report.concerns().stream().filter(c -> c.severity() == Severity.ERROR).count();
    long cautions = report.concerns().size() - errors;
    if (errors + cautions == 0) {
      return "no concern";
    }
    return (errors > 0 ? count(errors, "error") : "") + (errors > 0 && cautions > 0 ? ", " : "")
        + (cautions > 0 ? count(cautions, "caution") : "");
  }

  /** Each concern, the first few of each rule in full. */
  public static List<String> concerns(PrintReport report) {
    List<String> lines = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      List<Concern> some = report.concerns().stream().filter(c -> c.severity() == severity).toList();
      for (String rule : some.stream().map(Concern::rule).distinct().toList()) {
        List<Concern> same = some.stream().filter(c -> c.rule().equals(rule)).toList();
        same.stream().limit(TOLD).forEach(concern -> lines.add("  " + line(concern)));
        if (same.size() > TOLD) {
          lines.add("  and " + (same.size() - TOLD) + " more of " + rule + "; --json lists all");
        }
      }
    }
    return lines;
  }

  private static String line(Concern c) {
    return (c.severity() == Severity.ERROR ? "ERROR " : "caution ") + c.rule() + " at (" + round(c.x()) + ", "
        + round(c.y()) + ", " + round(c.z()) + "): " + c.message() + " (" + against(c) + "). " + c.advice();
  }

  /** What was measured and what it was held against; a start in the air has no limit that could be set. */
  private static String against(Concern c) {
    String measured = round(c.measured());
    String unit = c.limit().unit();
    return c.rule().equals(ISLAND)
        ? measured + " " + unit + " across where it starts; nothing may start in the air, however small"
        : measured + ", limit " + round(c.bound()) + " " + unit + " by " + c.limit().key();
  }

  private static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  private static String round(double value) {
    return Words.number(Math.rint(value * 100) / 100);
  }
}
