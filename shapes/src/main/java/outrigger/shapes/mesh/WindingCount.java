package outrigger.shapes.mesh;

import java.util.Arrays;

/** Winding numbers found by looking along a ray: operands and by how much each of them changes. */
final class WindingCount {
  private int[] items = new int[16];
  private int size;

  void add(int operand, int change) {
    if (size + 2 > items.length) {
      items = Arrays.copyOf(items, 2 * items.length);
    }
    items[size++] = operand;
    items[size++] = change;
  }

  /** Applies all changes, forward (1) or backward (-1). */
  void replay(Membership to, int way) {
    for (int i = 0; i < size; i += 2) {
      to.add(items[i], way * items[i + 1]);
    }
  }
}
