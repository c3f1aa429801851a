package outrigger.shapes.print.ball;

import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/** Gathers where a ball touches the surface, and finds feet of perpendiculars. */
public final class Touching extends NearSearch {
  /** Part of a facet's height. */
  private static final double BORDER = 1e-3;
  /** cos 3 degrees, between the way to the centre and the normal: facets of one face differ by less, but for needles. */
  private static final double SQUARELY = 0.9986;

  private Spokes spokes;
  private boolean needlesToo;

  /** Looks among the facets of a tree. */
  public Touching(FacetTree tree) {
    super(tree);
  }

  /**
   * Fills spokes with the directions from each facet within reach of the centre to the centre. Facets too narrow to tell
   * which way they face are left to those beside them, where there are any.
   */
  void gather(Vec centre, double reach, Spokes into) {
    spokes = into;
    spokes.clear();
    needlesToo = false;
    walk(centre, reach);
    if (spokes.isEmpty()) {
      needlesToo = true;
      walk();
    }
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
    if (d2 <= reach2 && d2 > 0 && (needlesToo || !tree.isNeedle(slot))) {
      double d = Math.sqrt(d2);
      double wayX = (x - qx) / d;
      double wayY = (y - qy) / d;
      double wayZ = (z - qz) / d;
      spokes.add(wayX, wayY, wayZ, d, Math.abs(tree.alongNormal(slot, wayX, wayY, wayZ)) > SQUARELY);
      isDone = spokes.isFull();
    }
  }
}
