package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Grid;

/** Laws of areas over random profiles. Rounding moves a boundary by a grid step, so areas agree to length x step. */
class ProfilePropertyTest {
  private static final long SEED = 20240517;
  private static final double SLACK = 400 * Grid.STEP;

  @Test
  void booleans_randomPairs_areasAddUp() {
    Random random = new Random(SEED);
    for (int i = 0; i < 60; i++) {
      Profile a = random(random);
      Profile b = random(random);
      String which = "seed " + SEED + ", round " + i;
      double common = a.common(b).area();
      assertEquals(a.area() + b.area(), a.join(b).area() + common, SLACK, which);
      assertEquals(a.area() - common, a.cut(b).area(), SLACK, which);
      assertEquals(a.join(b), b.join(a), which);
      assertEquals(a.common(b), a.common(b), which);
      assertEquals(0, a.cut(a).area(), which);
      assertEquals(a, a.join(a), which);
    }
  }

  @Test
  void booleans_quarterTurnsAndMirrors_commute() {
    Random random = new Random(SEED + 1);
    for (int i = 0; i < 30; i++) {
      Profile a = random(random);
      Profile b = random(random);
      String which = "seed " + (SEED + 1) + ", round " + i;
      // Crossings at exactly half a step round the other way once mirrored, so areas agree rather than corners.
      assertEquals(a.cut(b).area(), a.turn(90).cut(b.turn(90)).area(), SLACK, which);
      assertEquals(a.cut(b).area(), a.mirrorX().cut(b.mirrorX()).area(), SLACK, which);
      assertEquals(a, a.mirrorX().mirrorX(), which);
      assertEquals(a.mirrorY(), a.mirrorX().turn(180), which);
    }
  }

  @Test
  void offset_randomConvex_steinerFormula() {
    Random random = new Random(SEED + 2);
    for (int i = 0; i < 40; i++) {
      double width = 1 + 20 * random.nextDouble();
      double depth = 1 + 20 * random.nextDouble();
      double d = 0.05 + 3 * random.nextDouble();
      double angle = 360 * random.nextDouble();
      double steiner = width * depth + 2 * (width + depth) * d + Math.PI * d * d;
      double lost = 2 * Math.PI * d * Profile.CHORD_ERROR + SLACK;
      assertEquals(steiner, Profile.rectangle(width, depth).turn(angle).offset(d).area(), lost,
          "seed " + (SEED + 2) + ", round " + i);
    }
  }

  @Test
  void offset_randomTriangles_arcsWithinChordError() {
    Random random = new Random(SEED + 3);
    for (int i = 0; i < 40; i++) {
      double d = 0.1 + 4 * random.nextDouble();
      double x = 2 + 12 * random.nextDouble();
      double y = 2 + 12 * random.nextDouble();
      Region grown = Profile.polygon(0, 0, 10, 0, x, y).offset(d).regions().get(0);
      double[][] corners = {{0, 0}, {10, 0}, {x, y}};
      for (int k = 0; k < grown.shell().size(); k++) {
        double mx = midpoint(grown.shell().x(k), grown.shell().x((k + 1) % grown.shell().size()));
        double my = midpoint(grown.shell().y(k), grown.shell().y((k + 1) % grown.shell().size()));
        double nearest = d;
        for (double[] c : corners) {
          nearest = Math.min(nearest, Math.hypot(mx - c[0], my - c[1]));
        }
        // Midpoints of arc chords are nearest to a corner; those of straight sides lie d or more from all of them.
        assertTrue(nearest > d - Profile.CHORD_ERROR - 2 * Grid.STEP, "seed " + (SEED + 3) + ", round " + i);
      }
    }
  }

  private static double midpoint(int a, int b) {
    return Grid.toMm((long) a + b) / 2;
  }

  private static Profile random(Random random) {
    double a = 2 + 18 * random.nextDouble();
    double b = 2 + 18 * random.nextDouble();
    Profile profile = switch (random.nextInt(6)) {
      case 0 -> Profile.rectangle(a, b);
      case 1 -> Profile.hole(a);
      case 2 -> Profile.slot(Math.max(a, b), Math.min(a, b));
      case 3 -> Profile.hexagon(a);
      case 4 -> Profile.rectangle(a + 4, b + 4).cut(Profile.post(Math.min(a, b)));
      default -> Profile.roundedRectangle(a, b, Math.min(a, b) / 3);
    };
    double angle = random.nextBoolean() ? 90 * random.nextInt(4) : 360 * random.nextDouble();
    return profile.turn(angle).move(10 * random.nextDouble() - 5, 10 * random.nextDouble() - 5);
  }
}
