package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.solid.Solid;

class NearHullsTest {

  /** A hull turned by a little, as a file tells it: facets that nothing tells to be turned. */
  private static Solid turned(Solid hull, double degrees) {
    Solid turned = hull.turn(Axis.X, degrees).turn(Axis.Y, degrees);
    return Proof.judge(Mesher.mesh(turned)).proven().orElseThrow().solid();
  }

  /** Three hulls of twelve points, a thousandth of a degree apart: their edges cross at angles as small. */
  @Test
  void union_ofThreeHullsTurnedByALittle_settles() {
    for (int seed : new int[] {4, 10, 13, 21, 24, 64, 97, 100, 141, 150, 160, 189}) {
      Solid hull = Hull.of(new Random(seed), 12, 4);
      Outcome union = Outcome.of(Solid.union(hull, turned(hull, 1e-3), turned(hull, -1e-3)));
      assertEquals(Outcome.Cause.NONE, union.refusal(), union.words());
    }
  }
}
