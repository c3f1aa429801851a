package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Solid;

/** Proving a mesh as it was rounded before looking whether rounding did harm changes nothing in what is proven. */
class ProofOfSolidTest {

  @Test
  void of_randomExpressions_sameAsJudgingTheMeshAtRest() {
    int sound = 0;
    int mended = 0;
    for (long seed = 1; seed <= 250; seed++) {
      Solid solid = RandomExpression.small(seed).whole().solid();
      String judged = words(() -> Proof.judge(Mesher.mesh(solid)));
      Proof.Verdict[] verdict = new Proof.Verdict[1];
      assertEquals(judged, words(() -> verdict[0] = Proof.of(solid)), "seed " + seed);
      if (verdict[0] != null && verdict[0].proven().isPresent()) {
        assertArrayEquals(Mesher.mesh(solid).xyz(), verdict[0].proven().get().mesh().xyz(), "seed " + seed);
        assertArrayEquals(Mesher.mesh(solid).corners(), verdict[0].proven().get().mesh().corners(), "seed " + seed);
        sound++;
        mended += shown(solid) > 1 ? 1 : 0;
      }
    }
    assertTrue(sound > 100, sound + " sound");
    assertTrue(mended > 0, "rounding did harm nowhere: the second way was not tried");
  }

  /** How many meshes are shown on the way to a sound one. */
  private static int shown(Solid solid) {
    int[] count = new int[1];
    Mesher.mesh(solid, mesh -> {
      count[0]++;
      return Proof.judge(mesh).proven().isPresent();
    });
    return count[0];
  }

  private static String words(Supplier<Proof.Verdict> verdict) {
    try {
      return verdict.get().findings().toString();
    } catch (ShapeException refusal) {
      return refusal.getMessage();
    }
  }
}
