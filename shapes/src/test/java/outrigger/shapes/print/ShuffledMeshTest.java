package outrigger.shapes.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** What is told of a part does not hang on the order in which its facets and their corners are listed. */
class ShuffledMeshTest {
  private static final int PARTS = 30;

  @Test
  void reports_areTheSameToTheLastDigit() {
    Random random = new Random(7);
    int concerns = 0;
    for (int i = 0; i < PARTS; i++) {
      CheckedMesh given = Specimens.proven(part(random));
      List<Integer> order = Arrays.asList(IntStream.range(0, given.mesh().facetCount()).boxed().toArray(Integer[]::new));
      Collections.shuffle(order, random);
      CheckedMesh shuffled = listed(given.mesh(), order, random);
      PrintReport expected = report(given);
      PrintReport report = report(shuffled);
      assertEquals(expected.concerns(), report.concerns());
      assertEquals(expected.facts(), report.facts());
      assertEquals(expected.notExamined(), report.notExamined());
      concerns += expected.concerns().size();
      for (int k = 0; k < expected.fields().size(); k++) {
        for (int f = 0; f < order.size(); f++) {
          assertEquals(expected.fields().get(k).value(order.get(f)), report.fields().get(k).value(f));
          assertEquals(expected.fields().get(k).places(order.get(f)), report.fields().get(k).places(f));
        }
      }
    }
    assertTrue(concerns > PARTS);
  }

  private static PrintReport report(CheckedMesh mesh) {
    return Printability.examine(new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1)).mapped());
  }

  private static CheckedMesh listed(Mesh mesh, List<Integer> order, Random random) {
    int[] xyz = new int[9 * order.size()];
    int at = 0;
    for (int facet : order) {
      int first = random.nextInt(3);
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(facet, (first + k) % 3);
        xyz[at++] = mesh.x(v);
        xyz[at++] = mesh.y(v);
        xyz[at++] = mesh.z(v);
      }
    }
    return Proof.judge(Mesh.of(xyz, IntStream.range(0, xyz.length / 3).toArray())).proven().orElseThrow();
  }

  /** Boxes, posts and cones that cut into each other, some of them drilled: gaps, thin walls and ledges of all kinds. */
  private static Solid part(Random random) {
    Solid part = Specimens.box(0, 0, 0, 24, 24, 2);
    for (int i = 0; i < 6; i++) {
      double x = 2 + 16 * random.nextDouble();
      double y = 2 + 16 * random.nextDouble();
      double z = 1 + 6 * random.nextDouble();
      double size = 0.3 + 5 * random.nextDouble();
      Solid next = switch (random.nextInt(4)) {
        case 0 -> Specimens.box(x, y, z, size, 6, 4);
        case 1 -> Prism.of(Profile.post(size + 0.5), 0, 9).move(x, y, 0);
        case 2 -> Revolution.cone(size, 8 - size, 0, 6).move(x, y, 1);
        default -> Specimens.box(x, y, 0, 3, size, 9);
      };
      part = random.nextInt(3) == 0 ? part.cut(next) : part.join(next);
    }
    return part;
  }
}
