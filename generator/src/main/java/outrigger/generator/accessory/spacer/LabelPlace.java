package outrigger.generator.accessory.spacer;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.feature.Label;
import outrigger.generator.param.BadDimension;

/** Finds room for a label among the holes of a spacer. */
final class LabelPlace {
  /** Share of the corner radius by which a rectangle must keep off the sides to stay out of the corner: 1 - 1/sqrt 2. */
  private static final double CORNER = 0.3;

  private LabelPlace() {}

  private record Area(double x1, double x2, double y1, double y2) {
    double size() {
      return Math.max(0, x2 - x1) * Math.max(0, y2 - y1);
    }
  }

  /**
   * The label at the place where it comes out largest.
   *
   * @param wall kept free round holes and along edges, mm
   * @throws BadDimension where no place is large enough, for the largest one there is
   */
  static Label find(String text, SpacerParams p, HolePattern holes, double wall) {
    List<Area> areas = areas(p, holes, wall);
    areas.sort((a, b) -> Double.compare(b.size(), a.size()));
    Label best = null;
    BadDimension refusal = null;
    for (Area area : areas) {
      try {
        Label label = Label.fit(text, area.x2 - area.x1, area.y2 - area.y1, p.printer(), "engrave");
        if (best == null || label.capital() > best.capital()) {
          best = label.move((area.x1 + area.x2) / 2, (area.y1 + area.y2) / 2);
        }
      } catch (BadDimension e) {
        refusal = refusal == null ? e : refusal;
      }
    }
    if (best == null) {
      throw refusal;
    }
    return best;
  }

  /** Between the columns over the whole width, and between the rows over the whole length. */
  private static List<Area> areas(SpacerParams p, HolePattern holes, double wall) {
    double margin = wall + CORNER * p.cornerRadius();
    double x = p.length() / 2 - margin;
    double y = p.width() / 2 - margin;
    List<Area> areas = new ArrayList<>();
    List<double[]> across = holes.count() == 0 ? List.of(new double[] {-x, x})
        : gaps(holes.columns(), holes.halfX() + wall, x);
    for (double[] gap : across) {
      areas.add(new Area(gap[0], gap[1], -y, y));
    }
    if (holes.count() > 0) {
      for (double[] gap : gaps(holes.lines(), holes.halfY() + wall, y)) {
        areas.add(new Area(-x, x, gap[0], gap[1]));
      }
    }
    return areas;
  }

  private static List<double[]> gaps(List<Double> middles, double half, double end) {
    List<double[]> gaps = new ArrayList<>();
    double from = -end;
    for (double middle : middles) {
      gaps.add(new double[] {from, middle - half});
      from = middle + half;
    }
    gaps.add(new double[] {from, end});
    return gaps;
  }
}
