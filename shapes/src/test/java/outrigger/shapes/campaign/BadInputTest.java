package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Expressions that cannot be evaluated are refused in words. Files are in {@code stl.SolidFromStlTest}. */
class BadInputTest {
  private static final Solid CUBE = Prism.of(Profile.rectangle(2, 2), 0, 2);

  private static void assertRefused(Executable attempt, String... parts) {
    ShapeException e = assertThrows(ShapeException.class, attempt);
    for (String part : parts) {
      assertTrue(e.getMessage().contains(part), e.getMessage());
    }
    assertTrue(e.getMessage().endsWith(e.advice()), e.getMessage());
  }

  @Test
  void notANumber_isRefused() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      String word = String.valueOf(bad);
      assertRefused(() -> Mesher.mesh(CUBE.move(0, bad, 0)), word);
      assertRefused(() -> Mesher.mesh(CUBE.turn(Axis.Y, bad)), "not a finite number");
      assertRefused(() -> Prism.of(Profile.rectangle(2, 2), 0, bad), word);
      assertRefused(() -> Profile.rectangle(bad, 2), word);
      assertRefused(() -> Profile.polygon(0, 0, bad, 0, 1, 1), word);
    }
  }

  @Test
  void outOfRange_isRefusedWithThePlace() {
    assertRefused(() -> Mesher.mesh(CUBE.move(0, 1023.5, 0)), "1024.500, ", "+-1024 mm");
    assertRefused(() -> Mesher.mesh(CUBE.turn(Axis.Z, 30).move(-1023.5, 0, 0)), "(-1024.", "+-1024 mm");
    assertRefused(() -> Mesher.mesh(CUBE.join(CUBE.move(1, 1, 1).move(5000, 0, 0))), "5001.0 mm");
  }

  @Test
  void sidesThatAreNoMultipleOfFour_areRefused() {
    for (int sides : new int[] {Integer.MIN_VALUE, -4, 0, 3, 4, 10, Integer.MAX_VALUE}) {
      assertRefused(() -> Revolution.sphere(5, sides), sides + " sides", "multiple of 4");
      assertRefused(() -> Revolution.cone(5, 2, 0, 3, sides), sides + " sides", "multiple of 4");
    }
  }

  @Test
  void noOperand_isRefused() {
    assertRefused(() -> Solid.union(List.of()), "no operand");
    assertRefused(() -> Solid.common(), "no operand");
  }

  @Test
  void nothingLeft_isRefused() {
    assertRefused(() -> Mesher.mesh(CUBE.cut(CUBE)), "nothing is left");
    assertRefused(() -> Mesher.mesh(CUBE.move(1, 0, 0).cut(CUBE.move(1, 0, 0))), "from (0.000, -1.000, 0.000) mm to");
    assertRefused(() -> Mesher.mesh(Solid.common(CUBE, CUBE.move(3, 0, 0))), "nothing is left");
  }

  @Test
  void touch_isRefusedWithThePlaceAsGiven() {
    Solid row = CUBE.move(5, -7, 3);
    assertRefused(() -> Mesher.mesh(row.join(row.move(2, 2, 0))), "parts touch only along a line", "(6.000, -6.000, ");
  }

  @Test
  void severalPieces_areCounted() {
    Solid three = CUBE.join(CUBE.move(3, 0, 0), CUBE.move(0, 0, 5));
    assertEquals(3, Proof.judge(Mesher.mesh(three)).proven().orElseThrow().measures().pieces());
  }
}
