package outrigger.generator.clash;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Cut;
import outrigger.shapes.solid.Placed;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;

/** An upright box, mm. One with a greatest coordinate below its least is empty. */
record Bounds(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
  static final Bounds NOTHING = new Bounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);
  /** Rounding to the grid may move a leaf's corner this far. */
  private static final double ROUNDING = 2 * Grid.STEP;

  /** A box that holds a solid, as read off its description: often larger than need be, never smaller. */
  static Bounds of(Solid solid) {
    return of(solid, Placement.IDENTITY);
  }

  private static Bounds of(Solid solid, Placement placement) {
    if (solid instanceof Placed placed) {
      return of(placed.solid(), placed.placement().then(placement));
    } else if (solid instanceof Union union) {
      return union.solids().stream().map(s -> of(s, placement)).reduce(NOTHING, Bounds::with);
    } else if (solid instanceof Common common) {
      return common.solids().stream().map(s -> of(s, placement)).reduce(Bounds::common).orElseThrow();
    } else if (solid instanceof Cut cut) {
      return of(cut.solid(), placement);
    } else if (solid instanceof Prism prism) {
      return of(prism).placed(placement);
    } else if (solid instanceof Revolution revolution) {
      return of(revolution).placed(placement);
    }
    throw new AssertionError(solid);
  }

  private static Bounds of(Prism p) {
    double out = Math.max(0, -Math.tan(Math.toRadians(p.draftDegrees()))) * (p.top() - p.bottom()) * MITRE;
    return new Bounds(p.profile().minX() - out, p.profile().minY() - out, p.bottom(), p.profile().maxX() + out,
        p.profile().maxY() + out, p.top());
  }

  /** How far a drafted corner may run out along its mitre, in wall offsets; corners as sharp as 15 degrees. */
  private static final double MITRE = 8;

  private static Bounds of(Revolution r) {
    double radius = r.halfSection().maxX() / Math.cos(Math.PI / r.sides());
    return new Bounds(-radius, -radius, r.halfSection().minY(), radius, radius, r.halfSection().maxY());
  }

  private Bounds placed(Placement p) {
    Bounds all = NOTHING;
    for (int corner = 0; corner < 8; corner++) {
      double x = (corner & 1) == 0 ? minX : maxX;
      double y = (corner & 2) == 0 ? minY : maxY;
      double z = (corner & 4) == 0 ? minZ : maxZ;
      all = all.with(point(p.x(x, y, z), p.y(x, y, z), p.z(x, y, z)));
    }
    return all.grown(ROUNDING);
  }

  static Bounds point(double x, double y, double z) {
    return new Bounds(x, y, z, x, y, z);
  }

  /** The box round both. */
  Bounds with(Bounds o) {
    return new Bounds(Math.min(minX, o.minX), Math.min(minY, o.minY), Math.min(minZ, o.minZ),
        Math.max(maxX, o.maxX), Math.max(maxY, o.maxY), Math.max(maxZ, o.maxZ));
  }

  /** What both have in common. */
  Bounds common(Bounds o) {
    return new Bounds(Math.max(minX, o.minX), Math.max(minY, o.minY), Math.max(minZ, o.minZ),
        Math.min(maxX, o.maxX), Math.min(maxY, o.maxY), Math.min(maxZ, o.maxZ));
  }

  /** Larger on every side; smaller if negative. */
  Bounds grown(double by) {
    return new Bounds(minX - by, minY - by, minZ - by, maxX + by, maxY + by, maxZ + by);
  }

  /** Its shortest side; negative where it is empty. */
  double thickness() {
    return Math.min(maxX - minX, Math.min(maxY - minY, maxZ - minZ));
  }

  boolean overlaps(Bounds o) {
    return common(o).thickness() >= 0;
  }

  /** Distance between two boxes, 0 where they meet. */
  double distance(Bounds o) {
    double dx = Math.max(0, Math.max(o.minX - maxX, minX - o.maxX));
    double dy = Math.max(0, Math.max(o.minY - maxY, minY - o.maxY));
    double dz = Math.max(0, Math.max(o.minZ - maxZ, minZ - o.maxZ));
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  Spot middle() {
    return new Spot((minX + maxX) / 2, (minY + maxY) / 2, (minZ + maxZ) / 2);
  }
}
