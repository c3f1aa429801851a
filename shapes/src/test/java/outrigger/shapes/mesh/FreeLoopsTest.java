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
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Loops that a sheet does without: a plate with a strip that lies in it, flush above and below, is the plate. With the strip
 * its faces need sheets, without it they do not; what is cut and added must come out the same.
 */
class FreeLoopsTest {
  /** Plates; more by a property, for a long run. */
  private static final int SEEDS = Integer.getInteger("outrigger.loops.seeds", 60);
  private static final double HALF = 30;
  private static final double TOP = 4;

  @Test
  void mesh_plateWithFlushStrip_isThatOfThePlate() {
    compare(false, 1e-9);
  }

  /** Cut at an angle: with the strip the frame is another, and corners may be rounded otherwise. */
  @Test
  void mesh_plateWithFlushStripCutTilted_isThatOfThePlate() {
    compare(true, 1e-3);
  }

  private static void compare(boolean tilted, double tolerance) {
    int made = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      String which = "seed " + seed;
      try {
        Mesh plain = Mesher.spatial(part(seed, tilted, List.of()));
        made++;
        Mesh flush = Mesher.spatial(part(seed, tilted, strips(seed)));
        assertEquals(ReferencePartTest.volume(plain), ReferencePartTest.volume(flush), tolerance, which);
        if (!tilted) {
          assertEquals(plain.facetCount(), flush.facetCount(), which);
        }
      } catch (ShapeException refusal) {
        // it touches itself, and so it does with the strip: nothing to compare
      }
    }
    assertTrue(2 * made > SEEDS, made + " of " + SEEDS);
  }

  private static List<Solid> strips(long seed) {
    Random random = new Random(-1 - seed);
    List<Solid> strips = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      strips.add(Prism.of(Profile.rectangle(2 * HALF, 1 + random.nextInt(12)), 0, TOP).move(0, random.nextInt(40) - 20, 0));
    }
    return strips;
  }

  private static Solid part(long seed, boolean tilted, List<Solid> strips) {
    Random random = new Random(seed);
    List<Solid> joined = new ArrayList<>(List.of(Prism.of(Profile.rectangle(2 * HALF, 2 * HALF), 0, TOP)));
    joined.addAll(strips);
    for (int i = random.nextInt(4); i > 0; i--) {
      joined.add(feature(random, tilted));
    }
    Solid part = Solid.union(joined);
    List<Solid> cutters = new ArrayList<>();
    for (int i = 1 + random.nextInt(6); i > 0; i--) {
      cutters.add(feature(random, tilted));
    }
    return part.cut(cutters);
  }

  private static Solid feature(Random random, boolean tilted) {
    int size = 1 + random.nextInt(8);
    Profile[] outlines = {Profile.hole(size), Profile.hexagon(size), Profile.rectangle(size, 1 + random.nextInt(8)),
        Profile.hole(2 * size)};
    int from = random.nextInt(6) - 3;
    Solid feature = Prism.of(outlines[random.nextInt(outlines.length)], from, from + 1 + random.nextInt(8));
    if (tilted) {
      feature = feature.turn(Axis.X, random.nextInt(3) * 7).turn(Axis.Z, random.nextInt(4) * 10);
    }
    return feature.move(random.nextInt(40) - 20, random.nextInt(40) - 20, 0);
  }

  /** What stands inside a loop keeps it from being free: a post flush with the plate, in a hole, with a hole of its own. */
  @Test
  void mesh_postFlushInHole_isApart() {
    Solid plate = Prism.of(Profile.rectangle(2 * HALF, 2 * HALF), 0, TOP).cut(Prism.of(Profile.rectangle(20, 20), -1, 5));
    Solid post = Prism.of(Profile.rectangle(10, 10), 0, TOP).cut(Prism.of(Profile.rectangle(4, 4), -1, 5));
    Mesh mesh = Mesher.spatial(Solid.union(plate, post));
    assertEquals((60 * 60 - 20 * 20 + 10 * 10 - 4 * 4) * TOP, ReferencePartTest.volume(mesh), 1e-9);
    // two rings of eight corners: eight facets on each cap, eight walls of two facets
    assertEquals(2 * (2 * 8 + 16), mesh.facetCount());
  }
}
