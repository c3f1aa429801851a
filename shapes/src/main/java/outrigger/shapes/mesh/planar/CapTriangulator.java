package outrigger.shapes.mesh.planar;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.triangulation.ConstrainedTriangulation;
import outrigger.shapes.mesh.triangulation.FaceTriangulator;
import outrigger.shapes.mesh.triangulation.Triangulation;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;

/**
 * Cuts caps into facets: constrained Delaunay, no corner added. What lies inside an odd number of a cap's rims belongs to it.
 *
 * <p>Caps with the same rims, as at both ends of a plate, are cut once.
 */
final class CapTriangulator {
  private static final ConstrainedTriangulation.Crossing NONE = (s, t) -> {
    throw new IllegalStateException("rims that do not meet cross each other");
  };

  private final Rims rims;
  private final int[] firstCorner;
  private final ConstrainedTriangulation marks = new ConstrainedTriangulation();
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
    marks.reset(0, 1, 0, NONE);
    Triangulation tri = marks.triangulation();
    int size = 0;
    for (int r : ofRims) {
      size += rims.rim(r).size();
    }
    int[] number = new int[size + 3];
    int id = 0;
    for (int r : ofRims) {
      Rim rim = rims.rim(r);
      int[] vertex = tri.insertSpread(rim.size(), i -> tri.insertNew(ExactPoint.of(rim.u[i], rim.v[i], 0)));
      for (int i = 0; i < vertex.length; i++) {
        number[vertex[i]] = firstCorner[r] + i;
        marks.lay(vertex[i], vertex[rim.next(i)], id++, ConstrainedTriangulation.NO_LINE);
      }
    }
    boolean[] inside = FaceTriangulator.inside(tri);
    IntList facets = new IntList();
    for (int t = 0; t < tri.triangleCount(); t++) {
      for (int h = Triangulation.edge(t); inside[t] && h < Triangulation.edge(t) + 3; h++) {
        facets.add(number[tri.origin(h)]);
      }
    }
    return facets.toArray();
  }
}
