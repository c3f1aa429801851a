package outrigger.shapes.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;

class SolidTest {
  private static final int MANY = 4_000;

  /** Each call nests the solid it is called on; nobody counts how often a loop does. */
  @Test
  void joinAndCut_oneAfterTheOtherByThousands_areEvaluated() {
    Solid plate = Prism.of(Profile.rectangle(2 * MANY / 50 + 2, 102), 0, 1);
    Solid holed = plate;
    Solid posts = plate.move(0, 0, -1);
    for (int i = 0; i < MANY; i++) {
      double x = 2 * (i / 50) - MANY / 50 + 1;
      double y = 2 * (i % 50) - 49;
      holed = holed.cut(Prism.of(Profile.rectangle(1, 1), -1, 2).move(x, y, 0));
      posts = posts.join(Prism.of(Profile.rectangle(1, 1), -0.5, 1).move(x, y, 0));
    }
    double whole = 2 * (2 * MANY / 50 + 2) / 2 * 102;
    assertVolume(whole - MANY, holed);
    assertVolume(whole + MANY, posts);
  }

  @Test
  void move_oneAfterTheOtherByThousands_isTheirSum() {
    Solid moved = Prism.of(Profile.rectangle(2, 3), 0, 1);
    for (int i = 0; i < 10 * MANY; i++) {
      moved = moved.move(Grid.STEP, 0, 0);
    }
    Mesh mesh = Mesher.mesh(moved);
    int least = IntStream.range(0, mesh.vertexCount()).map(mesh::x).min().orElseThrow();
    assertEquals(10 * MANY - Grid.PER_MM, least);
  }

  /** Joined and cut in turns each nests the other; beyond what a stack holds, that is said. */
  @Test
  void joinAndCut_inTurnsByTheHundredThousand_isRefused() {
    Solid nested = Prism.of(Profile.rectangle(2, 2), 0, 1);
    for (int i = 0; i < 50 * MANY; i++) {
      Solid post = Prism.of(Profile.rectangle(1, 1), 0.5, 2);
      nested = i % 2 == 0 ? nested.join(post) : nested.cut(post);
    }
    Solid deep = nested;
    ShapeException refusal = assertThrows(ShapeException.class, () -> Mesher.mesh(deep));
    assertTrue(refusal.getMessage().contains("more deeply"), refusal.getMessage());
  }

  private static void assertVolume(double expected, Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertTrue(verdict.proven().isPresent());
    assertEquals(expected, verdict.measures().volume(), 1e-6);
  }
}
