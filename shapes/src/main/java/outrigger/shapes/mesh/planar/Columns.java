package outrigger.shapes.mesh.planar;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.inside.Membership;
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
  /** Of each operand the heights between which it stands, and how often its outlines wind round the place. */
  private final int[] low;
  private final int[] high;
  private final int[] winding;
  /** Operands with a winding number other than 0, in no order, and where each stands in that list. */
  private final int[] covering;
  private final int[] placeOf;
  private int count;
  /** Heights with, in the low bits, twice the operand that begins there, and one more where it ends. */
  private long[] events = new long[16];
  private int[] heights = new int[16];

  Columns(List<Upright> operands, Membership.Tree tree) {
    membership = new Membership(tree);
    int n = operands.size();
    low = new int[n];
    high = new int[n];
    for (int i = 0; i < n; i++) {
      low[i] = operands.get(i).low();
      high[i] = operands.get(i).high();
    }
    winding = new int[n];
    covering = new int[n];
    placeOf = new int[n];
  }

  /** Steps into outlines of a rim, or out of them. */
  void step(Rim rim, boolean in) {
    for (int i = 0; i < rim.count(); i++) {
      add(rim.operand(i), in ? rim.change(i) : -rim.change(i));
    }
  }

  private void add(int operand, int change) {
    boolean before = winding[operand] != 0;
    winding[operand] += change;
    boolean now = winding[operand] != 0;
    if (now && !before) {
      placeOf[operand] = count;
      covering[count++] = operand;
    } else if (before && !now) {
      int moved = covering[--count];
      covering[placeOf[operand]] = moved;
      placeOf[moved] = placeOf[operand];
    }
  }

  /** The column here. */
  int[] column() {
    int n = 0;
    if (events.length < 2 * count) {
      events = new long[4 * count];
      heights = new int[4 * count];
    }
    for (int i = 0; i < count; i++) {
      int operand = covering[i];
      events[n++] = (long) low[operand] << 32 | 2L * operand;
      events[n++] = (long) high[operand] << 32 | 2L * operand + 1;
    }
    Arrays.sort(events, 0, n);
    int found = 0;
    boolean inside = false;
    for (int i = 0; i < n; i++) {
      int operand = (int) events[i] >> 1;
      boolean ends = (events[i] & 1) != 0;
      membership.add(operand, ends ? -winding[operand] : winding[operand]);
      boolean last = i + 1 == n || events[i] >> 32 != events[i + 1] >> 32;
      if (last && membership.inside() != inside) {
        inside = !inside;
        heights[found++] = (int) (events[i] >> 32);
      }
    }
    return Arrays.copyOf(heights, found);
  }
}
