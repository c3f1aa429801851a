package outrigger.shapes.print.layer;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.profile.Section;

class RimTest {
  private static final double[] ROOF = {-20, -20, 20, -20, 20, 20, -20, 20};
  private static final double[] POST = {-5, -5, 5, -5, 5, 5, -5, 5};
  private static final double[] ANGLE = {-5, -5, 5, -5, 5, 0, 0, 0, 0, 5, -5, 5};
  private static final double[] OTHER_POST = {10, -5, 15, -5, 15, 5, 10, 5};
  private static final double[] WALL = {-20, -20, -10, -20, -10, 20, -20, 20};

  /** What of the roof stands out over what is below. */
  private static Rim over(double[]... below) {
    Section piece = Section.of(List.of(ROOF));
    List<double[]> loops = new ArrayList<>();
    for (double[] loop : below) {
      piece = piece.minus(Section.of(List.of(loop)));
      loops.add(loop);
    }
    return Rim.of(piece, new OutlineGrid(loops));
  }

  @Test
  void mayHold_roofOnOnePost_doesNot() {
    assertFalse(over(POST).mayHold());
  }

  /** A line may go from one leg of the angle to the other. */
  @Test
  void mayHold_roofOnAnAngle_does() {
    assertTrue(over(ANGLE).mayHold());
  }

  @Test
  void mayHold_roofOnTwoPosts_does() {
    assertTrue(over(POST, OTHER_POST).mayHold());
  }

  /** Its edge is no hole: lines along it are left to be looked at. */
  @Test
  void mayHold_roofBesideAWall_isNotRuledOut() {
    assertTrue(over(WALL).mayHold());
  }
}
