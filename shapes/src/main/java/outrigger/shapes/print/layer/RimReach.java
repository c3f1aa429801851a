package outrigger.shapes.print.layer;

/** How far an area that stands out, and its rim, lie from the outline below. */
final class RimReach {
  /** Edges that stand out this part as far as the farthest point stand out alike, if as long as that part of it. */
  private static final double ALIKE = 0.98;
  private static final double EDGE = 0.1;
  /** Distance between the points asked on a line, mm. */
  private static final double APART = 0.5;

  private RimReach() {}

  /** Whether all that lies within a rim lies within a distance of what is below. */
  static boolean isWithin(Rim rim, OutlineGrid below, double distance) {
    return Cuts.alongX(rim, (from, to, y) -> {
      int steps = (int) Math.ceil((to - from) / APART) + 1;
      for (int k = 0; k < steps; k++) {
        if (!below.isWithin(distance, from + (to - from) * (k + 0.5) / steps, y)) {
          return false;
        }
      }
      return true;
    });
  }

  /** Whether free edges lie within a distance of what is below, but for what lies as near to their ends; middles always. */
  static boolean isWithinButCorners(Rim rim, OutlineGrid below, double distance) {
    for (int e = 0; e < rim.size(); e++) {
      double end = Math.min(distance, rim.length(e) / 2);
      double between = rim.length(e) - 2 * end;
      int steps = (int) Math.max(1, Math.ceil(between / APART));
      for (int i = 0; i <= steps && !rim.isCarried(e); i++) {
        double t = (end + between * i / steps) / rim.length(e);
        if (!below.isWithin(distance, rim.x0(e) + t * (rim.x1(e) - rim.x0(e)), rim.y0(e) + t * (rim.y1(e) - rim.y0(e)))) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether no edges of some length stand out about as far as the farthest point, throughout. */
  static boolean isPeaked(Rim rim, OutlineGrid below, double most) {
    double far = ALIKE * most;
    double length = 0;
    for (int e = 0; e < rim.size() && length < EDGE * most; e++) {
      double x = (rim.x0(e) + rim.x1(e)) / 2;
      double y = (rim.y0(e) + rim.y1(e)) / 2;
      boolean isFar = !rim.isCarried(e) && below.distance(x, y) >= far && below.distance(rim.x0(e), rim.y0(e)) >= far
          && below.distance(rim.x1(e), rim.y1(e)) >= far;
      length += isFar ? rim.length(e) : 0;
    }
    return length < EDGE * most;
  }
}
