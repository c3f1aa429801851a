package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Laws that union, cut and common part owe each other, on random solids of every kind. */
class BooleanLawsTest {
  private static final int SEED = 41;
  private static final int ROUNDS = 120;

  /**
   * vol(A) + vol(B) = vol(A or B) + vol(A and B), and A less B with the common part is A. Rounding to the grid moves a
   * corner by at most half a step: the bound is that times the area.
   */
  @Test
  void volumes_twoSolids_addUp() {
    int tried = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Random random = new Random(SEED + round);
      Solid a = solid(random);
      Solid b = solid(random);
      try {
        Measures both = measure(a.join(b));
        double common = measure(Solid.common(a, b)).volume();
        double less = measure(a.cut(b)).volume();
        double va = measure(a).volume();
        double bound = (both.area() + measure(a).area()) * Grid.STEP;
        String message = "seed " + (SEED + round);
        assertEquals(va + measure(b).volume(), both.volume() + common, bound, message);
        assertEquals(va, less + common, bound, message);
        assertEquals(both.volume(), measure(b.join(a)).volume(), message);
        tried++;
      } catch (ShapeException apart) {
        // nothing in common, or nothing left: no law to hold
      }
    }
    assertTrue(tried > ROUNDS / 3, "only " + tried + " rounds held something in common");
  }

  private static Measures measure(Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertTrue(verdict.proven().isPresent(), () -> verdict.findings().toString());
    return verdict.measures();
  }

  private static Solid solid(Random random) {
    double size = 2 + random.nextInt(6);
    Solid solid = switch (random.nextInt(6)) {
      case 0 -> Prism.of(Profile.rectangle(size, 4), 0, 3);
      case 1 -> Prism.of(Profile.roundedRectangle(size + 2, 5, 1), 0, 3).withTopEdge(EdgeForm.chamfer(0.5));
      case 2 -> Prism.of(Profile.post(size).cut(Profile.hexagon(1.5)), 0, 5);
      case 3 -> Revolution.cone(size, 1, 0, 4);
      case 4 -> Revolution.sphere(size, 24);
      default -> Prism.of(Profile.slotPost(size + 3, 3), 0, 2).withDraft(3);
    };
    if (random.nextInt(3) == 0) {
      solid = solid.turn(Axis.values()[random.nextInt(3)], random.nextInt(360) + 0.25);
    } else {
      solid = solid.turn(Axis.values()[random.nextInt(3)], 90 * random.nextInt(4));
    }
    return solid.move(4 * random.nextDouble(), 4 * random.nextDouble(), 2 * random.nextDouble());
  }
}
