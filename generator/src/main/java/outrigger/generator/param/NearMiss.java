package outrigger.generator.param;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Words a user may have meant. */
public final class NearMiss {
  private NearMiss() {}

  /**
   * The known words close to a mistyped one, closest first, at most three: within a third of its length in letters
   * added, dropped, changed or swapped, or one beginning with the other.
   */
  public static List<String> of(String word, Collection<String> known) {
    String given = word.toLowerCase(Locale.ROOT).replace('_', '-');
    int reach = Math.max(1, given.length() / 3);
    List<String> near = new ArrayList<>();
    for (String candidate : known) {
      if (rank(given, candidate) <= reach) {
        near.add(candidate);
      }
    }
    near.sort(Comparator.comparingInt((String c) -> rank(given, c)).thenComparing(Comparator.naturalOrder()));
    return List.copyOf(near.subList(0, Math.min(3, near.size())));
  }

  /** Advice for a mistyped word: what was meant if anything is near, else everything known. */
  public static String advice(String word, Collection<String> known) {
    List<String> near = of(word, known);
    if (near.isEmpty()) {
      return known.isEmpty() ? "Leave it out." : "Known are: " + String.join(", ", known) + ".";
    }
    return "Did you mean " + String.join(" or ", near) + "?";
  }

  private static int rank(String given, String candidate) {
    String known = candidate.toLowerCase(Locale.ROOT);
    boolean begins = given.length() >= 3 && (known.startsWith(given) || given.startsWith(known));
    return begins ? 1 : distance(given, known);
  }

  /** Letters added, dropped, changed or two neighbours swapped, to get from one word to the other. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int[][] d, int i, int j) {
    int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
