package outrigger.shapes.mesh.planar;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.triangulation.FaceSweep;
import outrigger.shapes.mesh.triangulation.Triangulation;
import outrigger.shapes.num.Interrupt;

/**
 * Cuts caps into facets: constrained Delaunay, no corner added. What lies inside an odd number of a cap's rims belongs to
 * it.
 *
 * <p>Caps with the same rims, as at both ends of a plate, are cut once.
 */
final class CapTriangulator {
  private final Rims rims;
  private final int[] firstCorner;
  private final FaceSweep sweep = new FaceSweep();
  private final Map<List<Integer>, int[]> known = new HashMap<>();

  /**
   * Prepares for the caps of a part.
   *
   * @param firstCorner the number of each rim's first corner; the others follow
   */
  CapTriangulator(Rims rims, int[] firstCorner) {
    this.rims = rims;
    this.firstCorner = firstCorner;
  }

  /**
   * The facets of a cap, three corners each, counter-clockwise seen from the axis's far end; not to be changed.
   *
   * @param ofRims the cap's rims, in ascending order
   */
  int[] facets(List<Integer> ofRims) {
    return known.computeIfAbsent(ofRims, this::cut);
  }

  private int[] cut(List<Integer> ofRims) {
    Interrupt.check();
    int size = 0;
    for (int r : ofRims) {
      size += rims.rim(r).size();
    }
    int[] number = new int[size];
    int[] after = new int[size];
    ExactPoint[] points = new ExactPoint[size];
    int at = 0;
    for (int r : ofRims) {
      Rim rim = rims.rim(r);
      for (int i = 0; i < rim.size(); i++) {
        points[at + i] = ExactPoint.of(rim.u[i], rim.v[i], 0);
        number[at + i] = firstCorner[r] + i;
        after[at + i] = at + rim.next(i);
      }
      at += rim.size();
    }
    Triangulation tri = sweep.cut(after, i -> points[i], 0, 1, 0);
    int[] facets = new int[3 * tri.triangleCount()];
    for (int i = 0; i < facets.length; i++) {
      facets[i] = number[sweep.corner(tri.origin(Triangulation.edge(i / 3) + i % 3))];
    }
    return facets;
  }
}
