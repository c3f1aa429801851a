package outrigger.shapes.mesh.wire;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.inside.WindingCount;

/**
 * Which operands hold where a walk is: winding numbers carried along, and taken anew where they cannot be relied on. The
 * operands whose surfaces the walk runs on count as absent.
 */
final class Surroundings {
  /** Weights of two ends for a point between them; others, any will do, are tried where the first lies on a face. */
  private static final int[][] WEIGHTS = {{1, 1}, {1, 2}, {3, 1}, {5, 7}, {11, 4}, {13, 29}, {97, 89}};

  private final Hiding hiding;
  private final Locator locator;
  /** The winding numbers here. */
  private final Membership place;
  /** The last {@link #label}, of which operand, and after how many changes of the place it was taken. */
  private int label;
  private int labelOf;
  private long labelledAt;

  Surroundings(Hiding hiding, Locator locator, ExpressionTree tree) {
    this.hiding = hiding;
    this.locator = locator;
    place = new Membership(tree);
  }

  /** Takes all numbers at a corner of an operand that nothing touches. */
  void enterAtCorner(ExactPoint corner, int operand) {
    enter(locator.around(corner, operand, operand));
  }

  /** Takes all numbers between two points on the surfaces of one operand or two. */
  void enterBetween(ExactPoint a, ExactPoint b, int operand, int other) {
    for (int[] weight : WEIGHTS) {
      try {
        enter(locator.around(ExactPoint.mean(a, weight[0], b, weight[1], b, weight[1]), operand, other));
        return;
      } catch (Locator.OnFace chance) {
        // the next weights give another point of the same piece
      }
    }
    throw new IllegalStateException("every point tried on an edge lies on a face");
  }

  /**
   * Takes all numbers at a point where operands meet: between there and the next change that is known, others may change
   * where that is hidden. Where another one passes through the point itself, takes them beside it.
   *
   * @param near the next change
   * @param operand one on whose surface the walk runs
   * @param other another, or the same
   * @param passed those that meet it at the point
   */
  void enterAt(ExactPoint at, ExactPoint near, int operand, int other, int... passed) {
    WindingCount found;
    try {
      found = locator.around(at, operand, other, passed);
    } catch (Locator.OnFace chance) {
      enterBetween(at, near, operand, other);
      return;
    }
    enter(found);
  }

  private void enter(WindingCount found) {
    place.clear();
    found.replay(this::change, 1);
    labelledAt = -1;
  }

  /** Away from all sheets an operand winds as often above as below. */
  private void change(int operand, int above, int below) {
    place.add(operand, above);
  }

  int winding(int operand) {
    return place.winding(operand);
  }

  void add(int operand, int change) {
    place.add(operand, change);
  }

  /** What {@link #set} takes to come back to here. */
  int[] numbers() {
    return place.numbers();
  }

  void set(int[] numbers) {
    place.set(numbers);
  }

  /** Whether the numbers are not to be relied on at the surface of an operand that winds so often before it. */
  boolean isStale(int operand, boolean leaves, int before) {
    return hiding.hidesBehind(operand, leaves) || before != 0 != leaves && hiding.hidesAny();
  }

  /** Whether it is beyond the surface of an operand that something may show. */
  boolean showsAhead(int operand, boolean leaves) {
    return hiding.hidesBehind(operand, leaves) || leaves && !hiding.hidesBehind(operand, false);
  }

  /** Whether the surface of an operand bounds the result here as it is (1), turned over (-1) or not at all (0). */
  int label(int operand) {
    if (place.changes() != labelledAt || operand != labelOf) {
      boolean out = place.inside();
      place.add(operand, 1);
      boolean in = place.inside();
      place.add(operand, -1);
      label = in == out ? 0 : in ? 1 : -1;
      labelOf = operand;
      labelledAt = place.changes();
    }
    return label;
  }

  /** Whether the expression holds outside two operands (bit 0), in the first (1), in the second (2), in both (3). */
  int state(int first, int second) {
    int state = place.inside() ? 1 : 0;
    place.add(first, 1);
    state |= place.inside() ? 2 : 0;
    place.add(second, 1);
    state |= place.inside() ? 8 : 0;
    place.add(first, -1);
    state |= place.inside() ? 4 : 0;
    place.add(second, -1);
    return state;
  }
}
