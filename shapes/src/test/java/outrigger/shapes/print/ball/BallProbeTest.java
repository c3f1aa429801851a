package outrigger.shapes.print.ball;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.sample.SampleList;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

class BallProbeTest {
  private static final long SEED = 20240611;

  private static Mesh someMesh() {
    Solid solid = WallShapes.block(20, 20, 3).join(Prism.of(Profile.post(3), 2, 9).move(4, 4, 0),
        WallShapes.block(1, 12, 8).move(-5, 0, 0)).cut(Prism.of(Profile.hole(2.5), -1, 9).move(4, -5, 0));
    return Mesher.mesh(WallShapes.turned(solid));
  }

  /** The ball's definition over points spread densely on all facets, without tree or shrinking. */
  @Test
  void first_againstDensePoints_isTheLargestBall() {
    Mesh mesh = someMesh();
    FacetTree tree = FacetTree.of(mesh);
    SampleList points = new SampleList();
    for (int slot = 0; slot < tree.size(); slot++) {
      new FacetSamples(tree, 0.1).addTo(points, slot);
    }
    Random random = new Random(SEED);
    BallProbe probe = new BallProbe(tree, 10, 10);
    for (int i = 0; i < 60; i++) {
      int s = random.nextInt(points.size());
      int slot = points.slot(s);
      Vec p = points.point(s);
      Vec u = tree.normal(slot).times(i % 2 == 0 ? -1 : 1);
      double width = 10;
      for (int k = 0; k < points.size(); k++) {
        Vec d = points.point(k).minus(p);
        double ahead = d.dot(u);
        width = points.slot(k) != slot && ahead > 1e-5 ? Math.min(width, d.dot(d) / ahead) : width;
      }
      double found = probe.first(slot, p, u).width();
      assertTrue(found <= width + 1e-6, "seed " + SEED + ", point " + i + ": " + found + " > " + width);
      // no facet point lies farther than 0.1 from one of those spread
      assertTrue(found >= width * 0.9 - 0.15, "seed " + SEED + ", point " + i + ": " + found + " << " + width);
    }
  }

  /** All facets that a walk meets in a ball, and all that lie in it by the distance of each. */
  private static final class Ball extends NearSearch {
    private final BitSet met = new BitSet();

    private Ball(FacetTree tree) {
      super(tree);
    }

    private BitSet met(Vec centre, double radius) {
      met.clear();
      walk(centre, radius);
      return met;
    }

    private BitSet all(double radius) {
      BitSet all = new BitSet();
      for (int slot = 0; slot < tree.size(); slot++) {
        all.set(slot, closest(slot, x, y, z) <= radius * radius);
      }
      return all;
    }

    @Override
    protected void meet(int slot) {
      met.set(slot);
    }
  }

  @Test
  void walk_anyBall_meetsEveryFacetInIt() {
    FacetTree tree = FacetTree.of(someMesh());
    Random random = new Random(SEED);
    Ball ball = new Ball(tree);
    int found = 0;
    for (int i = 0; i < 300; i++) {
      Vec centre = new Vec(24 * random.nextDouble() - 12, 24 * random.nextDouble() - 12, 20 * random.nextDouble() - 6);
      double radius = Math.pow(10, 2 * random.nextDouble() - 1);
      BitSet met = ball.met(centre, radius);
      BitSet all = ball.all(radius);
      found += all.cardinality();
      all.andNot(met);
      assertTrue(all.isEmpty(), "seed " + SEED + ", ball " + i + " misses " + all);
    }
    assertTrue(found > 1500, "only " + found);
  }

  @Test
  void addTo_anyFacet_leavesNoPointFartherThanPromised() {
    assertNoPointFarther(FacetTree.of(someMesh()));
  }

  /** Two edges are next to equal, and the corner between them lies far beside the third. */
  @Test
  void addTo_leaningNeedles_leavesNoPointFartherThanPromised() {
    assertNoPointFarther(FacetTree.of(Mesher.mesh(WallShapes.turned(Prism.of(Profile.polygon(0, 0, 0.01, 0, 0.05, 6), 0,
        0.01)))));
  }

  private static void assertNoPointFarther(FacetTree tree) {
    Random random = new Random(SEED);
    double spacing = 0.7;
    for (int slot = 0; slot < tree.size(); slot++) {
      SampleList points = new SampleList();
      new FacetSamples(tree, spacing).addTo(points, slot);
      double area = 0;
      for (int i = 0; i < points.size(); i++) {
        area += points.area(i);
      }
      assertEquals(tree.area(slot), area, 1e-9 * (1 + area));
      for (int n = 0; n < 40; n++) {
        double s = random.nextDouble();
        double t = random.nextDouble() * (1 - s);
        Vec p = tree.corner(slot, 0).times(1 - s - t).plus(tree.corner(slot, 1), s).plus(tree.corner(slot, 2), t);
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
          nearest = Math.min(nearest, points.point(i).distance(p));
        }
        assertTrue(nearest <= spacing * 1.001, "seed " + SEED + ", facet " + slot + ": " + nearest);
      }
    }
  }

  @Test
  void pull_ofKnownSpokes_isTheNearestPointOfTheirHull() {
    Spokes spokes = new Spokes();
    spokes.add(1, 0, 0, 1, true);
    assertEquals(1, spokes.pull().length(), 1e-12);
    spokes.add(0, 1, 0, 1, true);
    assertEquals(Math.sqrt(0.5), spokes.pull().length(), 1e-9);
    spokes.add(0, 0, 1, 1, true);
    assertEquals(Math.sqrt(1 / 3.0), spokes.pull().length(), 1e-9);
    spokes.add(0, 0, -1, 1, true);
    assertEquals(0, spokes.pull().plus(new Vec(0, 0, 0), 1).length(), 1e-9);
  }
}
