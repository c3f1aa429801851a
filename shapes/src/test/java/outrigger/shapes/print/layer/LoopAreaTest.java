package outrigger.shapes.print.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.profile.Section;

/** Places in stars with a hole, as the 2D library's own locator has them. */
class LoopAreaTest {
  private static final long SEED = 31;

  private static double[] star(Random random, int corners, double least, double most, boolean clockwise) {
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * StrictMath.PI * (clockwise ? corners - i : i) / corners;
      double r = least + (most - least) * random.nextDouble();
      xy[2 * i] = 5 + r * StrictMath.cos(angle);
      xy[2 * i + 1] = r * StrictMath.sin(angle) - 2;
    }
    return xy;
  }

  @Test
  void holds_randomPlaces_asTheLibrary() {
    for (int n = 3; n < 60; n++) {
      Random random = new Random(SEED + n);
      List<double[]> loops = List.of(star(random, n + 2, 4, 9, false), star(random, n, 0.2, 1.5, true));
      LoopArea area = new LoopArea(loops);
      Section section = Section.of(loops);
      for (int i = 0; i < 200; i++) {
        double x = 5 + 20 * (random.nextDouble() - 0.5);
        double y = 20 * (random.nextDouble() - 0.5) - 2;
        assertEquals(section.holds(x, y), area.holds(x, y), "seed " + (SEED + n) + ", " + x + " " + y);
      }
    }
  }

  @Test
  void holds_onAnUprightEdge_isInside() {
    LoopArea square = new LoopArea(List.of(new double[] {0, 0, 4, 0, 4, 4, 0, 4}));
    assertTrue(square.holds(0, 2) && square.holds(4, 2) && square.holds(2, 2));
    assertTrue(!square.holds(-0.001, 2) && !square.holds(4.001, 2) && !square.holds(2, 4.1) && !square.holds(2, -0.1));
  }

  private static double looseLength(List<Double> p) {
    double sum = 0;
    for (int i = 0; i < p.size(); i += 4) {
      sum += Math.hypot(p.get(i + 2) - p.get(i), p.get(i + 3) - p.get(i + 1));
    }
    return sum;
  }

  /** Trying directions in sums alone comes to what the lines themselves do. */
  @Test
  void beads_anyDirection_areTheSumsOfTheChords() {
    Random random = new Random(SEED);
    Section piece = Section.of(List.of(star(random, 40, 4, 9, false), star(random, 20, 0.5, 3, true)));
    OutlineGrid below = new OutlineGrid(List.of(piece.loops().get(1)));
    Rim rim = Rim.of(piece, below);
    assertTrue(rim.carriedLength() > 0);
    for (double angle = 0; angle < 3; angle += 0.1) {
      double x = StrictMath.cos(angle);
      double y = StrictMath.sin(angle);
      Chords chords = Chords.laid(rim, x, y);
      Beads beads = Beads.laid(rim, x, y);
      assertEquals(chords.sums(), beads);
      double[] across = rim.extent(-y, x);
      double width = across[1] - across[0];
      assertEquals(looseLength(chords.looseLines()) * width / Cuts.lines(width), beads.loose(), 1e-9);
      assertEquals(piece.area(), beads.held() + beads.loose(), 0.03 * piece.area());
    }
  }
}
