package outrigger.shapes.mesh.inside;

import java.util.Arrays;

/** What a look from a point found: operands, and how often each winds round it just above a plane and just below. */
public final class WindingCount implements WindingTaker {
  /** Operand, above and below, one after the other. */
  private int[] items = new int[24];
  private int size;

  @Override
  public void add(int operand, int above, int below) {
    if (size + 3 > items.length) {
      items = Arrays.copyOf(items, 2 * items.length);
    }
    items[size++] = operand;
    items[size++] = above;
    items[size++] = below;
  }

  /** Passes all of it on, forward (1) or taken back (-1). */
  public void replay(WindingTaker to, int way) {
    for (int i = 0; i < size; i += 3) {
      to.add(items[i], way * items[i + 1], way * items[i + 2]);
    }
  }

  /** Whether an operand was found to hold here. */
  boolean holds(int operand) {
    for (int i = 0; i < size; i += 3) {
      if (items[i] == operand && items[i + 1] > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether an operand found here settles the expression whatever another one does. */
  boolean settles(Hiding hiding, int other) {
    for (int i = 0; i < size; i += 3) {
      if (items[i + 1] > 0 && hiding.settles(items[i], other)) {
        return true;
      }
    }
    return false;
  }
}
