package outrigger.shapes.mesh.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.num.Placement;

/**
 * The axes of operands that are turned by any angle, as others to evaluate in: those that most operands share first, then
 * those that the rest are turned least from. So the order is the same however all are turned by quarters, mirrored, moved or
 * reordered.
 */
public final class Turns {
  /** How many are tried at most. Any number would do: seldom does a second come to rest where the first does not. */
  private static final int MOST = 3;
  /** Differences in turns below which two count as one: no corner on the grid tells them by a thousandth of a step. */
  private static final double SAME = 0x1p-34;

  private Turns() {}

  /**
   * A placement of each of the first few turns: of those that have one in common, that which comes first along its axes.
   *
   * @param all the placements of all turned operands
   */
  public static List<Placement> of(List<Placement> all) {
    List<Placement> distinct = new ArrayList<>();
    for (Placement p : all) {
      int same = indexOf(p, distinct);
      if (same < 0) {
        distinct.add(p);
      } else if (compare(moved(p), moved(distinct.get(same))) < 0) {
        distinct.set(same, p);
      }
    }
    distinct.sort(Comparator.comparing((Placement p) -> -count(p, all)).thenComparing(p -> inSteps(fromAll(p, all)),
        Arrays::compare));
    return distinct.subList(0, Math.min(MOST, distinct.size()));
  }

  private static int indexOf(Placement p, List<Placement> among) {
    int i = among.size() - 1;
    while (i >= 0 && !isSame(p, among.get(i))) {
      i--;
    }
    return i;
  }

  private static int count(Placement p, List<Placement> among) {
    return (int) among.stream().filter(q -> isSame(p, q)).count();
  }

  private static boolean isSame(Placement p, Placement q) {
    return compare(rows(p), rows(q)) == 0;
  }

  /** Where a placement moves to, as seen in its own axes. */
  private static double[] moved(Placement p) {
    Placement back = p.inverse();
    return new double[] {-back.tx(), -back.ty(), -back.tz()};
  }

  /** The sum of all turns, then of all moves, as seen from one and in its axes. */
  private static double[] fromAll(Placement p, List<Placement> all) {
    double[] seen = new double[13];
    double[] r = rows(p);
    for (Placement q : all) {
      double[] s = rows(q);
      for (int i = 0; i < 9; i++) {
        double product = r[i / 3] * s[i % 3] + r[3 + i / 3] * s[3 + i % 3] + r[6 + i / 3] * s[6 + i % 3];
        seen[1 + i] += product;
        seen[0] -= i % 4 == 0 ? product : 0;
      }
      for (int i = 0; i < 3; i++) {
        seen[10 + i] += r[i] * (q.tx() - p.tx()) + r[3 + i] * (q.ty() - p.ty()) + r[6 + i] * (q.tz() - p.tz());
      }
    }
    return seen;
  }

  /** In whole steps: what differs by less than one, each from the next, has an order all the same. */
  private static long[] inSteps(double[] seen) {
    return Arrays.stream(seen).mapToLong(x -> Math.round(x / SAME)).toArray();
  }

  private static int compare(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (Math.abs(a[i] - b[i]) > SAME) {
        return Double.compare(a[i], b[i]);
      }
    }
    return 0;
  }

  private static double[] rows(Placement p) {
    return new double[] {p.xx(), p.xy(), p.xz(), p.yx(), p.yy(), p.yz(), p.zx(), p.zy(), p.zz()};
  }
}
