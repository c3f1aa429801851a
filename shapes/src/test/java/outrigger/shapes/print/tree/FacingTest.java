package outrigger.shapes.print.tree;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.FinerMesh;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.facet.Arrangement;
import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.facet.Seams;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** No wall or gap lies outside the regions, as rays through all facets, one by one, see it. */
class FacingTest {
  private static final double WIDTH = 1.2;
  private static final double LONGEST_EDGE = 1;
  /** Faces that hold a ball between them: cosine of the angle between their normals. */
  private static final double PARALLEL = -0.98;
  /** One facet in so many is looked from. */
  private static final int STRIDE = 41;
  /** Of a ray's way, mm. */
  private static final double NOTHING = 1e-6;

  @Test
  void wherePartsAreThin_isARegion() {
    Solid shell = Revolution.sphere(5, 32).cut(Revolution.sphere(4.2, 32).move(0.2, 0.1, 0));
    Solid pipe = Prism.of(Profile.post(8, 0.05), 0, 9).cut(Prism.of(Profile.hole(6.4), -1, 10));
    Solid slit = Specimens.box(0, 0, 0, 12, 9, 6).cut(Specimens.box(4, -1, 2, 0.8, 11, 5),
        Specimens.box(8, -1, -1, 1.1, 11, 5), Prism.of(Profile.hole(1), -1, 7).move(2, 4, 0));
    for (Solid part : new Solid[] {shell, pipe, slit}) {
      for (Solid turned : new Solid[] {part, part.turn(Axis.X, 31).turn(Axis.Y, 17).turn(Axis.Z, 8)}) {
        Arrangement facets = Arrangement.of(FinerMesh.of(Specimens.proven(turned), LONGEST_EDGE).mesh(), Workers.of(1));
        assertFound(facets, true);
        assertFound(facets, false);
      }
    }
  }

  private static void assertFound(Arrangement arrangement, boolean inward) {
    Facets facets = new Facets(arrangement.mesh());
    FacetTree tree = FacetTree.of(arrangement, facets);
    Cones cones = new Cones(arrangement.mesh(), facets, Seams.of(arrangement.mesh()), inward);
    NearRegions regions = Facing.of(tree, cones, inward, WIDTH, WIDTH, Workers.of(2));
    for (int slot = 0; slot < tree.size(); slot += STRIDE) {
      Vec middle = tree.corner(slot, 0).plus(tree.corner(slot, 1), 1).plus(tree.corner(slot, 2), 1).times(1.0 / 3);
      if (isThin(tree, slot, middle, inward ? -1 : 1)) {
        assertTrue(regions.meets(slot) && regions.holds(middle), (inward ? "the wall at " : "the gap at ") + middle);
      }
    }
  }

  /** Whether straight before a facet there is another, parallel to it. */
  private static boolean isThin(FacetTree tree, int slot, Vec from, double side) {
    Vec way = tree.normal(slot).times(side);
    double nearest = WIDTH;
    boolean isParallel = false;
    for (int other = 0; other < tree.size(); other++) {
      double far = other == slot ? nearest : way(tree, other, from, way);
      if (far > NOTHING && far < nearest) {
        nearest = far;
        isParallel = tree.normal(other).dot(tree.normal(slot)) < PARALLEL;
      }
    }
    return isParallel;
  }

  /** How far along a way a facet is met, infinite if it is not. */
  private static double way(FacetTree tree, int slot, Vec from, Vec way) {
    Vec normal = tree.normal(slot);
    double far = tree.corner(slot, 0).minus(from).dot(normal) / way.dot(normal);
    Vec at = from.plus(way, far);
    for (int k = 0; k < 3; k++) {
      Vec a = tree.corner(slot, k);
      Vec edge = tree.corner(slot, (k + 1) % 3).minus(a);
      if (!(edge.cross(at.minus(a)).dot(normal) >= 0)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return far;
  }
}
