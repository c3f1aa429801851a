package outrigger.shapes.print.layer;

/**
 * How well a direction suits for laying lines across an area, in sums alone.
 *
 * @param held area under lines with both ends on the edge of what carries, mm^2
 * @param loose area under the others, mm^2
 * @param span length of the longest line held at both ends, mm; 0 if there is none
 */
record Beads(double held, double loose, double span) {
  /** Share of the area that a line as long as the area is wide weighs: own choice. */
  private static final double LONG = 0.05;

  /** Lays the lines along a unit vector. */
  static Beads laid(Rim rim, double x, double y) {
    return of(new Cuts(rim, x, y));
  }

  /** The sums over lines. */
  static Beads of(Cuts cuts) {
    double held = 0;
    double loose = 0;
    double span = 0;
    for (int j = 0; j < cuts.lines(); j++) {
      for (int i = cuts.start[j]; i + 1 < cuts.start[j + 1]; i += 2) {
        double length = cuts.at[i + 1] - cuts.at[i];
        if (cuts.isHeld(i)) {
          held += length * cuts.apart;
          span = Math.max(span, length);
        } else {
          loose += length * cuts.apart;
        }
      }
    }
    return new Beads(held, loose, span);
  }

  /** How well the direction suits: the share held, less a little for long lines; areas are as wide as lines are apart. */
  double merit() {
    return share() - LONG * span / Math.sqrt(Math.max(held + loose, Cuts.NEAR * span));
  }

  /** Share of the area held, 0 to 1. */
  double share() {
    return held + loose == 0 ? 0 : held / (held + loose);
  }
}
