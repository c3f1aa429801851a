package outrigger.shapes.print.ball;

import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/** Gathers where a ball touches the surface, and finds feet of perpendiculars. */
public final class Touching extends NearSearch {
  /** Part of a facet's height. */
  private static final double BORDER = 1e-3;

  private Spokes spokes;

  /** Looks among the facets of a tree. */
  public Touching(FacetTree tree) {
    super(tree);
  }

  /** Fills spokes with the directions from each facet within reach of the centre to the centre. */
  void gather(Vec centre, double reach, Spokes into) {
    spokes = into;
    spokes.clear();
    x = centre.x();
    y = centre.y();
    z = centre.z();
    reach2 = reach * reach;
    walk();
  }

  /** The point of a facet closest to a place. */
  public Vec foot(int slot, Vec place) {
    closest(slot, place.x(), place.y(), place.z());
    return new Vec(qx, qy, qz);
  }

  /** Whether the foot last asked for lies clear of its facet's borders. */
  boolean isInside() {
    return Math.min(Math.min(s, t), 1 - s - t) > BORDER;
  }

  @Override
  protected void meet(int slot) {
    double d2 = closest(slot, x, y, z);
    if (d2 <= reach2 && d2 > 0) {
      double d = Math.sqrt(d2);
      spokes.add((x - qx) / d, (y - qy) / d, (z - qz) / d, d);
      isDone = spokes.isFull();
    }
  }
}
