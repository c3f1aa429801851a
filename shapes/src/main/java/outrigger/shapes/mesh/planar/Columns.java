package outrigger.shapes.mesh.planar;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.inside.Windings;
import outrigger.shapes.mesh.leaf.Upright;

/**
 * Where along the axis the result lies, over a place of the plane, told by the outlines that go round that place.
 *
 * <p>A column is a list of heights in ascending order: the result begins at the first, ends at the second, begins again at
 * the third, and so on.
 */
final class Columns {
  /** Goes up through the operands that cover the place, in {@link #column}; below all of them before and after. */
  private final Membership membership;
  /** Of each operand the heights between which it stands. */
  private final int[] low;
  private final int[] high;
  /** How often its outlines wind round the place. */
  private final Windings covering;
  /** Heights with, in the low bits, twice the operand that begins there, and one more where it ends. */
  private long[] events = new long[16];
  private int[] heights = new int[16];

  Columns(List<Upright> operands, ExpressionTree tree) {
    membership = new Membership(tree);
    int n = operands.size();
    low = new int[n];
    high = new int[n];
    for (int i = 0; i < n; i++) {
      low[i] = operands.get(i).low();
      high[i] = operands.get(i).high();
    }
    covering = new Windings(n);
  }

  /** Steps into outlines of a rim, or out of them. */
  void step(Rim rim, boolean in) {
    for (int i = 0; i < rim.count(); i++) {
      covering.add(rim.operand(i), in ? rim.change(i) : -rim.change(i));
    }
  }

  /** The column here. */
  int[] column() {
    int n = 2 * covering.count();
    if (events.length < n) {
      events = new long[2 * n];
      heights = new int[2 * n];
    }
    for (int i = 0; i < n; i += 2) {
      int operand = covering.operand(i / 2);
      events[i] = (long) low[operand] << 32 | 2L * operand;
      events[i + 1] = (long) high[operand] << 32 | 2L * operand + 1;
    }
    Arrays.sort(events, 0, n);
    int found = 0;
    boolean inside = false;
    for (int i = 0; i < n; i++) {
      int operand = (int) events[i] >> 1;
      boolean ends = (events[i] & 1) != 0;
      membership.add(operand, ends ? -covering.of(operand) : covering.of(operand));
      boolean last = i + 1 == n || events[i] >> 32 != events[i + 1] >> 32;
      if (last && membership.inside() != inside) {
        inside = !inside;
        heights[found++] = (int) (events[i] >> 32);
      }
    }
    return Arrays.copyOf(heights, found);
  }
}
