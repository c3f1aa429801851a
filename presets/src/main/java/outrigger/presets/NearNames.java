package outrigger.presets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the known names a mistyped one may stand for. */
public final class NearNames {
  private static final int MOST = 3;

  private NearNames() {}

  private record Near(String name, int distance) {}

  /**
   * At most three known names, nearest first, ties in the order given. Near is: at most a third of the longer name's
   * letters, rounded up, inserted, left out, replaced or swapped with a neighbour; case does not count.
   */
  public static List<String> of(String wrong, Collection<String> known) {
    List<Near> near = new ArrayList<>();
    for (String name : known) {
      int allowed = (Math.max(name.length(), wrong.length()) + 2) / 3;
      if (Math.abs(name.length() - wrong.length()) <= allowed) {
        int distance = distance(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
        if (distance <= allowed) {
          near.add(new Near(name, distance));
        }
      }
    }
    return near.stream().sorted(Comparator.comparingInt(Near::distance)).limit(MOST).map(Near::name).toList();
  }

  /** "Did you mean a, b or c? " or, where nothing is near, nothing. */
  static String hint(String wrong, Collection<String> known) {
    List<String> near = of(wrong, known);
    return near.isEmpty() ? "" : "Did you mean " + Words.or(near) + "? ";
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
