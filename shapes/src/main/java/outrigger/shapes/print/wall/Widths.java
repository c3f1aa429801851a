package outrigger.shapes.print.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.num.Decimals;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.NarrowPlace;

/** What the gauges of walls and of gaps have in common: how far they look, and how they tell what they find. */
final class Widths {
  /** A rule names so many places; the rest are counted. */
  static final int LISTED = 20;

  /** Samples lie this part of the thinnest wall apart, but no nearer and no farther than so many mm, */
  private static final double SPACING = 0.6;
  private static final double FINEST = 0.25;
  private static final double COARSEST = 0.7;
  /** unless there were more of them than this. */
  private static final double MOST_SAMPLES = 4e6;
  /** Places of less surface than this part of the square of the width looked for are dropped. */
  private static final double LEAST_AREA = 0.06;
  /** Far below what a printer can hold, mm. */
  static final double ROUNDING = 2e-3;

  /** Shorter lengths would be told as nothing, mm. */
  private static final double TOLD_LENGTH = 0.05;

  private Widths() {}

  /**
   * Distance of samples, mm: about half the thinnest wall, within bounds, and wider where a part's surface would need
   * more than four million.
   */
  static double spacing(Specimen specimen) {
    double wanted = Math.min(COARSEST, Math.max(FINEST, SPACING * specimen.limit(Limit.WALL)));
    return Math.max(wanted, Math.sqrt(specimen.measures().area() / MOST_SAMPLES));
  }

  /** Places of less surface are dropped, mm^2, where widths up to one are looked for, mm. */
  static double leastArea(double bound) {
    return LEAST_AREA * bound * bound;
  }

  /** Whether a width is below a limit by more than the grid and round forms make of it. */
  static boolean isBelow(double width, double limit) {
    return width < limit - ROUNDING;
  }

  /** The first concerns of each rule, and a sentence for each rule with more. */
  static List<Concern> listed(List<Concern> all, List<String> notListed) {
    List<Concern> kept = new ArrayList<>();
    for (String rule : all.stream().map(Concern::rule).distinct().toList()) {
      List<Concern> same = all.stream().filter(c -> c.rule().equals(rule)).toList();
      kept.addAll(same.subList(0, Math.min(LISTED, same.size())));
      if (same.size() > LISTED) {
        notListed.add("Of " + same.size() + " places of the rule " + rule + " the " + LISTED + " narrowest are told.");
      }
    }
    return kept;
  }

  /** Says so if samples had to stand too far apart to promise what is promised else. */
  static Optional<String> coarse(Specimen specimen) {
    double spacing = spacing(specimen);
    return spacing <= COARSEST ? Optional.empty()
        : Optional.of("The surface is so large that widths were measured only every " + hundredths(spacing)
            + " mm: a narrow spot smaller than that may be missed.");
  }

  /** Over how much surface something is so, mm^2: of a tip there is none to speak of. */
  static String over(double area) {
    return area < Words.LEAST_AREA ? " at that spot alone" : " over " + Words.number(area, 1) + " mm2 of surface";
  }

  /** Over how much surface a place is narrower than a bound; of an edge the length is told, for it has no surface. */
  static String over(NarrowPlace place, double bound) {
    double length = place.form() == NarrowPlace.Form.NOTCH ? place.below(bound).length() : 0;
    return length < TOLD_LENGTH ? over(place.area(bound)) : " along " + Words.number(length, 1) + " mm";
  }

  /** A length with both hundredths told, mm; without its unit. */
  static String hundredths(double length) {
    return Decimals.fixed(length, 2);
  }

  /** A place in words. */
  static String at(Vec place) {
    return "at (" + hundredths(place.x()) + ", " + hundredths(place.y()) + ", " + hundredths(place.z()) + ") mm";
  }
}
