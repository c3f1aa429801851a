package outrigger.shapes.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts of a campaign, filled by several threads. */
final class Tally {
  private static final int LINES = 40;

  private final Map<String, Integer> counts = new TreeMap<>();
  private final List<String> failures = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private double slowest;
  private long slowestSeed;

  synchronized void count(String what, int n) {
    counts.merge(what, n, Integer::sum);
  }

  synchronized void fail(long seed, String what) {
    failures.add("seed " + seed + ": " + what);
  }

  /** Something to look into that is no failure. */
  synchronized void note(long seed, String what) {
    notes.add("seed " + seed + ": " + what);
  }

  synchronized void time(long seed, double seconds) {
    if (seconds > slowest) {
      slowest = seconds;
      slowestSeed = seed;
    }
  }

  synchronized int count(String what) {
    return counts.getOrDefault(what, 0);
  }

  synchronized List<String> failures() {
    return List.copyOf(failures);
  }

  /** All counts, one a line, and the first failures and notes. */
  synchronized String text() {
    StringBuilder text = new StringBuilder();
    counts.forEach((what, n) -> text.append(String.format(java.util.Locale.ROOT, "%9d  %s%n", n, what)));
    text.append(String.format(java.util.Locale.ROOT, "slowest: seed %d, %.1f s%n", slowestSeed, slowest));
    text.append(String.format(java.util.Locale.ROOT, "%9d  failures%n", failures.size()));
    failures.stream().limit(LINES).forEach(f -> text.append("  ").append(f).append('\n'));
    notes.stream().limit(LINES).forEach(n -> text.append("  note: ").append(n).append('\n'));
    return text.toString();
  }
}
