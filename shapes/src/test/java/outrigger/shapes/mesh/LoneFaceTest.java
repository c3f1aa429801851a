package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Faces flush with a plate that its sheet does without: what ends in the plane of the plate's top makes the same part as what
 * reaches a little farther, where no face is flush. Corners where such parts cross may be rounded otherwise.
 */
class LoneFaceTest {
  /** Plates; more by a property, for a long run. */
  private static final int SEEDS = Integer.getInteger("outrigger.lone.seeds", 150);
  private static final double TOP = 4;

  @Test
  void mesh_endsFlushWithPlate_isThatOfEndsFartherOn() {
    int made = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Solid apart = part(seed, false);
      Mesh expected;
      try {
        expected = Mesher.spatial(apart);
      } catch (ShapeException refusal) {
        // it touches itself, flush or not
        continue;
      }
      made++;
      Mesh flush = Mesher.spatial(part(seed, true));
      assertEquals(ReferencePartTest.volume(expected), ReferencePartTest.volume(flush), 1e-3, "seed " + seed);
      assertEquals(expected.facetCount(), flush.facetCount(), "seed " + seed);
    }
    assertTrue(2 * made > SEEDS, made + " of " + SEEDS);
  }

  /** A plate with posts on it, or else with pockets in it and with nothing cut away above; with plugs inside. */
  private static Solid part(long seed, boolean flush) {
    Random random = new Random(seed);
    List<Solid> joined = new ArrayList<>(List.of(Prism.of(Profile.rectangle(60, 60), 0, TOP)));
    List<Solid> cutters = new ArrayList<>();
    boolean posts = random.nextBoolean();
    for (int i = 1 + random.nextInt(7); i > 0; i--) {
      int kind = random.nextInt(3);
      Profile outline = outline(random);
      int height = 1 + random.nextInt(3);
      Placed at = new Placed(outline, 10 * random.nextInt(9), random.nextInt(36) - 18, random.nextInt(36) - 18);
      if (kind == 0 && flush) {
        joined.add(at.prism(TOP - height, TOP));
      } else if (kind > 0 && posts) {
        joined.add(at.prism(flush ? TOP : TOP - 1, TOP + height));
      } else if (kind == 1) {
        cutters.add(at.prism(TOP - height, flush ? TOP : TOP + 1));
      } else if (kind == 2 && flush) {
        cutters.add(at.prism(TOP, TOP + height));
      }
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      cutters.add(new Placed(outline(random), 0, random.nextInt(36) - 18, random.nextInt(36) - 18).prism(-1, TOP + 9));
    }
    Axis axis = Axis.values()[random.nextInt(3)];
    return Solid.union(joined).cut(cutters).turn(axis, 90 * random.nextInt(4));
  }

  private record Placed(Profile outline, double turn, double x, double y) {
    Solid prism(double from, double to) {
      return Prism.of(outline, from, to).turn(Axis.Z, turn).move(x, y, 0);
    }
  }

  /** Rings, stars, and a comb, whose greatest corner sees teeth between its neighbours, among rounder ones. */
  private static Profile outline(Random random) {
    int size = 3 + random.nextInt(9);
    return switch (random.nextInt(6)) {
      case 0 -> Profile.post(size);
      case 1 -> Profile.post(size).cut(Profile.hole(1 + random.nextInt(size - 1)));
      case 2 -> Profile.rectangle(size, size).cut(Profile.hexagon(0.4 * size));
      case 3 -> star(size, 5 + random.nextInt(9));
      case 4 -> Profile.polygon(0, 0, size, 0, size, 6, 0.9 * size, 1, 0.8 * size, 5, 0.7 * size, 1, 0.5 * size, 5, 0, 1);
      default -> Profile.roundedRectangle(size, 3, 1);
    };
  }

  private static Profile star(double size, int tips) {
    double[] xy = new double[4 * tips];
    for (int i = 0; i < 2 * tips; i++) {
      double r = i % 2 == 0 ? size / 2 : size / 5;
      xy[2 * i] = r * Math.cos(Math.PI * i / tips);
      xy[2 * i + 1] = r * Math.sin(Math.PI * i / tips);
    }
    return Profile.polygon(xy);
  }

  /** A step within a face: what lies within the inner rim of the shoulder is not what lies outside of the outer one. */
  @Test
  void mesh_shoulderFlushWithPlate_keepsThePost() {
    Solid stepped = Prism.of(Profile.rectangle(12, 12), 1, TOP).join(Prism.of(Profile.post(8), TOP, 9));
    Mesh one = Mesher.mesh(stepped);
    Solid read = Faceted.of(one.xyz(), one.corners());
    Solid plate = Prism.of(Profile.rectangle(60, 60), 0, TOP);
    double post = ReferencePartTest.volume(one) - 12 * 12 * (TOP - 1);
    assertEquals(60 * 60 * TOP + post, ReferencePartTest.volume(Mesher.spatial(plate.join(read))), 1e-9);
    assertEquals(60 * 60 * TOP - 12 * 12 * (TOP - 1), ReferencePartTest.volume(Mesher.spatial(plate.cut(read))), 1e-9);
  }
}
