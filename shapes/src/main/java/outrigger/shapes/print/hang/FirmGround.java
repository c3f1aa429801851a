package outrigger.shapes.print.hang;

import java.util.List;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.Plumb;

/**
 * Ground that is solid from where what hangs begins up to a piece of it, straight below all the way: the core of a thread,
 * the round bar that fits into a twisted one.
 *
 * <p>Sought in rings of growing width, round a few points of a piece; places exactly on edges, as those straight along an
 * axis may be, are no ways.
 */
final class FirmGround {
  /** Places on a ring. */
  private static final int WAYS = 32;
  /** The first way from X, a quarter of the angle between two: no axis is one. */
  private static final double FIRST = Math.PI / 2 / WAYS;
  /** Ground is nearer than what was added up by more than this factor: it is sought in some directions only. */
  private static final double NEARER = 0.95;
  /** Rings looked at one after another, and steps in between to where the ground begins. */
  private static final int RINGS = 16;
  private static final int HALVINGS = 8;
  /** Of a piece's points so many are asked, of all pieces so many. */
  private static final int POINTS = 4;
  private static final int PIECES = 16;

  private final FacetTree tree;
  private final double layer;
  private final double from;

  /**
   * The ground of what hangs.
   *
   * @param layer height of a layer, mm
   * @param first its lowest piece
   */
  FirmGround(FacetTree tree, double layer, Hang first) {
    this.tree = tree;
    this.layer = layer;
    from = first.z() - layer / 2;
  }

  /**
   * How far pieces lie from it at most, where it is nearer than was added up; mm.
   *
   * @param hangs pieces, those that stand out farthest first
   * @param depths how far each was added up to stand out
   */
  double reach(List<Hang> hangs, double... depths) {
    int apart = (hangs.size() - 1) / PIECES + 1;
    double most = 0;
    for (int i = 0; i < hangs.size() && NEARER * depths[i] > most; i += apart) {
      double[] loose = hangs.get(i).loose().points();
      int step = 2 * ((loose.length / 2 - 1) / POINTS + 1);
      for (int p = 0; p < loose.length && most < NEARER * depths[i]; p += step) {
        most = Math.max(most, distance(loose[p], loose[p + 1], hangs.get(i).z() + layer / 2, depths[i]));
      }
    }
    return most < NEARER * depths[0] ? most : depths[0];
  }

  /** Distance of a place from it at a height, no more than some. */
  private double distance(double x, double y, double height, double most) {
    double least = most;
    for (int ring = 1; ring <= RINGS && least == most; ring++) {
      for (int way = 0; way < WAYS; way++) {
        double dx = StrictMath.cos(FIRST + 2 * Math.PI * way / WAYS);
        double dy = StrictMath.sin(FIRST + 2 * Math.PI * way / WAYS);
        double firm = most * ring / RINGS;
        if (Plumb.isSolid(tree, x + firm * dx, y + firm * dy, from, height)) {
          least = Math.min(least, edge(x, y, dx, dy, height, firm - most / RINGS, firm));
        }
      }
    }
    return least;
  }

  /** How far from a place along a way it begins, between two distances. */
  private double edge(double x, double y, double dx, double dy, double height, double before, double on) {
    double loose = before;
    double firm = on;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (loose + firm) / 2;
      if (Plumb.isSolid(tree, x + middle * dx, y + middle * dy, from, height)) {
        firm = middle;
      } else {
        loose = middle;
      }
    }
    return firm;
  }
}
