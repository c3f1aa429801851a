package outrigger.shapes.mesh.meet;

import java.util.Arrays;
import java.util.function.IntPredicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;

/** Boxes of what lies on a plane, one after the other. */
final class PlaneBounds {
  /** Grid units round what is apart from all else: more than rounding can hide, and room to look from. Own choice. */
  static final int GAP = 8;

  private int[] bounds = new int[6 * 32];
  private int size;

  /** Begins a box, of nothing yet. */
  void begin() {
    if (6 * size == bounds.length) {
      bounds = Arrays.copyOf(bounds, 2 * bounds.length);
    }
    BoxTree.clear(bounds, size++);
  }

  /** Widens the last box so that it holds a point with a gap round it. */
  void enclose(ExactPoint p, int gap) {
    for (int k = 0; k < 3; k++) {
      int at = 6 * (size - 1) + k;
      bounds[at] = Math.min(bounds[at], (int) p.grid(k) - gap);
      bounds[at + 3] = Math.max(bounds[at + 3], (int) p.grid(k) + gap);
    }
  }

  /** Adds the box of a piece of line. */
  void add(ExactPoint from, ExactPoint to) {
    begin();
    enclose(from, 0);
    enclose(to, 0);
  }

  /** Takes the last box back. */
  void drop() {
    size--;
  }

  boolean isEmpty() {
    return size == 0;
  }

  /** All boxes. */
  int[] all() {
    return Arrays.copyOf(bounds, 6 * size);
  }

  /** How many boxes of a tree overlap the last box and pass a test. */
  int countAtLast(BoxTree tree, IntPredicate test) {
    int[] count = {0};
    tree.forEachOverlap(bounds, size - 1, i -> count[0] += test.test(i) ? 1 : 0);
    return count[0];
  }
}
