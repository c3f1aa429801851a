package outrigger.shapes.print.place;

import outrigger.shapes.print.ball.Touching;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;

/** The closest points of two facets that do not cross, found among corners over faces and edges across edges. */
final class FacetPair {
  private final FacetTree tree;
  private final Touching touching;
  private double least;
  private Vec onFirst;
  private Vec onSecond;

  FacetPair(FacetTree tree, Touching touching) {
    this.tree = tree;
    this.touching = touching;
  }

  /** Finds the closest points of the facets in two slots. */
  void seek(int first, int second) {
    least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      Vec a = tree.corner(first, i);
      take(a, touching.foot(second, a));
      Vec b = tree.corner(second, i);
      take(touching.foot(first, b), b);
      for (int j = 0; j < 3; j++) {
        edges(a, tree.corner(first, (i + 1) % 3), tree.corner(second, j), tree.corner(second, (j + 1) % 3));
      }
    }
  }

  /** Where the lines of two edges come closest, if that lies within both edges; ends are seen to as corners. */
  private void edges(Vec a, Vec b, Vec c, Vec d) {
    Vec u = b.minus(a);
    Vec v = d.minus(c);
    Vec w = a.minus(c);
    double uu = u.dot(u);
    double vv = v.dot(v);
    double uv = u.dot(v);
    double whole = uu * vv - uv * uv;
    double s = (uv * v.dot(w) - vv * u.dot(w)) / whole;
    double t = (uu * v.dot(w) - uv * u.dot(w)) / whole;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
      take(a.plus(u, s), c.plus(v, t));
    }
  }

  private void take(Vec a, Vec b) {
    double distance = a.distance(b);
    if (distance < least) {
      least = distance;
      onFirst = a;
      onSecond = b;
    }
  }

  Vec onFirst() {
    return onFirst;
  }

  Vec onSecond() {
    return onSecond;
  }
}
