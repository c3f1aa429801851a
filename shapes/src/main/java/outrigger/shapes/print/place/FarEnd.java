package outrigger.shapes.print.place;

import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.spot.Reach;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/**
 * Looks from the top of a low strip through to its other end.
 *
 * <p>A rib stands on something; a web through a plate has an end on both sides. Where a strip is so small that samples fell
 * on one end alone, a line through its middle tells.
 */
final class FarEnd extends NearSearch {
  /** cos 30 degrees: an end faces along the line. */
  private static final double ALONG = 0.866;
  /** No farther than this the other end is looked for, mm: of a high web a part may look low. */
  private static final double FARTHEST = 3 * NarrowPlace.LOW;
  /** Crossings nearer to the start belong to the end it lies on, mm. */
  private static final double START = 1e-3;

  /** A line along a border meets both facets. */
  private static final double BORDER = 1e-6;

  private final BallProbe probe;
  private final Reach reach;
  private Vec from = new Vec(0, 0, 0);
  private Vec along = from;
  private double nearest;
  private int hit;

  FarEnd(FacetTree tree, Reach reach) {
    super(tree);
    probe = reach.probe(tree);
    this.reach = reach;
  }

  /** Whether a strip is as narrow at its other end, so that it stands on nothing. */
  boolean isOpen(NarrowPlace strip) {
    from = strip.centre();
    along = reach.direction(strip.top());
    nearest = FARTHEST;
    hit = -1;
    walk(from.plus(along, nearest / 2), nearest / 2);
    if (hit < 0) {
      return false;
    }
    Vec u = reach.direction(tree.normal(hit));
    BallProbe.Ball ball = probe.measureAlone(hit, from.plus(along, nearest), u);
    return u.dot(along) < -ALONG && ball.held() && ball.width() < reach.bound();
  }

  /**
   * Keeps the nearest facet that the line crosses (T. Moeller, B. Trumbore, Fast, minimum storage ray-triangle
   * intersection, 1997).
   */
  @Override
  protected void meet(int slot) {
    Vec a = tree.corner(slot, 0);
    Vec ab = tree.corner(slot, 1).minus(a);
    Vec ac = tree.corner(slot, 2).minus(a);
    Vec p = along.cross(ac);
    double det = ab.dot(p);
    Vec t = from.minus(a);
    Vec q = t.cross(ab);
    double u = t.dot(p) / det;
    double v = along.dot(q) / det;
    double way = ac.dot(q) / det;
    if (u >= -BORDER && v >= -BORDER && u + v <= 1 + BORDER && way > START && way < nearest) {
      nearest = way;
      hit = slot;
    }
  }
}
