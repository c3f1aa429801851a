package outrigger.presets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Finds the known names a mistyped one may stand for. */
public final class NearNames {
  private static final int MOST = 3;
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

  private NearNames() {}

  private record Near(String name, int distance, double numbersApart) {}

  /**
   * At most three known names, nearest first. Near is: at most a third of the longer name's
   * letters, rounded up, inserted, left out, replaced or swapped with a neighbour; case does not count. Of equals the
   * one whose numbers are closer goes first (to {@code 7x2}, {@code 6x2} before {@code 3x2}), then the one given
   * first.
   */
  public static List<String> of(String wrong, Collection<String> known) {
    List<Near> near = new ArrayList<>();
    for (String name : known) {
      int allowed = (Math.max(name.length(), wrong.length()) + 2) / 3;
      if (Math.abs(name.length() - wrong.length()) <= allowed) {
        int distance = distance(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
        if (distance <= allowed) {
          near.add(new Near(name, distance, numbersApart(wrong, name)));
        }
      }
    }
    return near.stream().sorted(Comparator.comparingInt(Near::distance)
        .thenComparingDouble(Near::numbersApart)).limit(MOST).map(Near::name).toList();
  }

  /** "Did you mean a, b or c? " or, where nothing is near, nothing. */
  static String hint(String wrong, Collection<String> known) {
    List<String> near = of(wrong, known);
    return near.isEmpty() ? "" : "Did you mean " + Words.or(near) + "? ";
  }

  /** Sum of the differences of the numbers in two names; infinite where one has more of them. */
  private static double numbersApart(String a, String b) {
    List<Double> ofA = NUMBER.matcher(a).results().map(found -> Double.valueOf(found.group())).toList();
    List<Double> ofB = NUMBER.matcher(b).results().map(found -> Double.valueOf(found.group())).toList();
    if (ofA.size() != ofB.size()) {
      return Double.POSITIVE_INFINITY;
    }
    double apart = 0;
    for (int i = 0; i < ofA.size(); i++) {
      apart += Math.abs(ofA.get(i) - ofB.get(i));
    }
    return apart;
  }

  /** Optimal string alignment distance, three rows at a time. */
  private static int distance(String a, String b) {
    int[] twoUp = new int[b.length() + 1];
    int[] up = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      up[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = up[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, Math.min(up[j], row[j - 1]) + 1);
        if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], twoUp[j - 2] + 1);
        }
      }
      int[] free = twoUp;
      twoUp = up;
      up = row;
      row = free;
    }
    return up[b.length()];
  }
}
