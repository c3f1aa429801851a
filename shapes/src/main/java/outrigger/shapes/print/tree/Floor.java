package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Vec;

/** A plane on which a walk's ball rests: what lies no higher is left out of the walk, however near. */
public final class Floor {
  /** What rises less above the plane is flush with it, mm. */
  private static final double FLAT = 1e-6;

  private double x;
  private double y;
  private double z;
  private double level;
  private boolean isLaid;

  /**
   * Lays it.
   *
   * @param up unit vector away from it
   * @param height of the plane along that, mm
   */
  public void lay(Vec up, double height) {
    x = up.x();
    y = up.y();
    z = up.z();
    level = height + FLAT;
    isLaid = true;
  }

  /** Takes it away: nothing is left out. */
  public void clear() {
    isLaid = false;
  }

  /** Whether nothing of a node rises above it. */
  boolean covers(PlaceTree places, int node) {
    return isLaid && places.mostAlong(node, x, y, z) <= level;
  }

  /** Whether nothing of a facet rises above it. */
  public boolean covers(FacetTree tree, int slot) {
    return isLaid && tree.along(slot, 0, x, y, z) <= level && tree.along(slot, 1, x, y, z) <= level
        && tree.along(slot, 2, x, y, z) <= level;
  }
}
