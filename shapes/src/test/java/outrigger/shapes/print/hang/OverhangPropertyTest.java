package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Random heaps of blocks, posts and cones: a moved, mirrored or turned heap has the same concerns. */
class OverhangPropertyTest {
  private static final long SEED = 20260;
  private static final int HEAPS = 25;

  private static double between(Random random, double least, double most) {
    return Math.rint((least + (most - least) * random.nextDouble()) * 64) / 64;
  }

  private static Solid heap(Random random) {
    Solid heap = Specimens.box(-15, -15, 0, 30, 30, 2);
    for (int i = 0; i < 4; i++) {
      double x = between(random, -12, 12);
      double y = between(random, -12, 12);
      double z = between(random, 0, 12);
      double size = between(random, 2, 12);
      Solid piece = switch (random.nextInt(3)) {
        case 0 -> Specimens.box(x, y, z, size, between(random, 2, 12), between(random, 1, 8));
        case 1 -> Prism.of(Profile.post(size), z, z + between(random, 1, 10)).move(x, y, 0);
        default -> Revolution.cone(2, 2 + size, 0, between(random, 1, 8)).move(x, y, z);
      };
      heap = heap.join(piece);
    }
    return heap;
  }

  /** Rule, severity and rounded size of each concern, in a fixed order. */
  private static String told(Solid solid) {
    List<Concern> concerns = new OverhangGauge().read(Specimens.of(solid)).concerns();
    return concerns.stream().map(c -> c.rule() + " " + c.severity() + " " + Math.round(c.area())).sorted()
        .collect(Collectors.joining(", "));
  }

  @Test
  void read_quarterTurnsAndMirrors_tellTheSame() {
    for (int i = 0; i < HEAPS; i++) {
      Solid heap = heap(new Random(SEED + i));
      String plain = told(heap);
      assertEquals(plain, told(heap.turn(Axis.Z, 90).move(7, -3, 11)), "seed " + (SEED + i));
      assertEquals(plain, told(heap.mirror(Axis.X)), "seed " + (SEED + i));
    }
  }
}
