package outrigger.generator.accessory.spacer;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.param.BadDimension;

/**
 * Where the holes of a spacer lie, about its middle.
 *
 * @param columns x of every column of holes, rising, mm
 * @param lines y of every row, rising, mm
 * @param halfX half of what a hole takes along X, its recess included and its slot
 * @param halfY half of what it takes along Y
 */
record HolePattern(List<Double> columns, List<Double> lines, double halfX, double halfY) {
  HolePattern {
    columns = List.copyOf(columns);
    lines = List.copyOf(lines);
  }

  /**
   * Lays the holes out.
   *
   * @throws BadDimension where holes run into each other, into a corner or too near an edge
   */
  static HolePattern of(SpacerParams p, ScrewHole hole) {
    double half = hole.mouth() / 2;
    HolePattern pattern = new HolePattern(spread(p.holes(), p.pitch()), spread(p.rows(), p.rowPitch()),
        half + p.slot() / 2, half);
    if (p.holes() > 0) {
      pattern.requireApart(p, hole.wall());
      pattern.requireInside(p, hole.wall());
      pattern.requireCorners(p, hole);
    }
    return pattern;
  }

  private static List<Double> spread(int count, double pitch) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add((i - (count - 1) / 2.0) * pitch);
    }
    return places;
  }

  int count() {
    return columns.size() * lines.size();
  }

  private void requireApart(SpacerParams p, double wall) {
    requireGap("pitch", p.holes(), p.pitch() - 2 * halfX, wall, "Raise pitch to "
        + Words.mm(2 * halfX + wall) + " or more, or make fewer holes.");
    requireGap("row-pitch", p.rows(), p.rowPitch() - 2 * halfY, wall, "Raise row-pitch to "
        + Words.mm(2 * halfY + wall) + " or more, or make one row.");
  }

  private static void requireGap(String key, int count, double gap, double wall, String advice) {
    if (count > 1 && gap < wall - 1e-9) {
      throw new BadDimension(key, between(gap) + ", where " + Words.mm(wall) + " is the minimum", advice);
    }
  }

  private static String between(double gap) {
    return gap < 0 ? "neighbouring holes run " + Words.mm(-gap) + " into each other"
        : "only " + Words.mm(gap) + " of wall is left between neighbouring holes";
  }

  private void requireInside(SpacerParams p, double wall) {
    requireEdge("length", "end", p.length() / 2 - columns.get(columns.size() - 1) - halfX, wall, "lower pitch"
        + (p.slot() > 0 ? " or slot" : ""));
    requireEdge("width", "side", p.width() / 2 - lines.get(lines.size() - 1) - halfY, wall,
        p.rows() > 1 ? "lower row-pitch" : "choose a smaller screw");
  }

  private static void requireEdge(String key, String edge, double left, double wall, String or) {
    if (left < wall - 1e-9) {
      throw new BadDimension(key, (left < 0 ? "the outer holes break " + Words.mm(-left) + " through the " + edge
          : "only " + Words.mm(left) + " of wall is left between the outer holes and the " + edge)
          + ", where " + Words.mm(wall) + " is the minimum", "Raise " + key + " by " + Words.mm(2 * (wall - left))
          + ", or " + or + ".");
    }
  }

  /** A rounded corner takes away what a straight one would leave. */
  private void requireCorners(SpacerParams p, ScrewHole hole) {
    double dx = columns.get(columns.size() - 1) + p.slot() / 2 - (p.length() / 2 - p.cornerRadius());
    double dy = lines.get(lines.size() - 1) - (p.width() / 2 - p.cornerRadius());
    double left = p.cornerRadius() - Math.hypot(dx, dy) - hole.mouth() / 2;
    if (dx > 0 && dy > 0 && left < hole.wall() - 1e-9) {
      throw new BadDimension("corner-radius", "the rounded corner of " + Words.mm(p.cornerRadius())
          + " leaves " + Words.mm(Math.max(0, left)) + " of wall at the outer holes, where " + Words.mm(hole.wall())
          + " is the minimum", "Lower corner-radius, or move the holes inwards.");
    }
  }
}
