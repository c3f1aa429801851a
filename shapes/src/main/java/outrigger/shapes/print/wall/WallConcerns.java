package outrigger.shapes.print.wall;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.check.Measures;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.place.NarrowPlace;

/** Judges thin places, each by the limit that its form calls for, and puts them into words. */
final class WallConcerns {
  /** Lengths that would be told as nothing are put in words, mm. */
  private static final double TOLD_FROM = 0.005;
  /** So many times as much surface is worth a second number. */
  private static final double MORE = 1.1;
  /** A ridge of less surface than this part of the thinnest wall's square is a speck. */
  private static final double SPECK = 0.5;

  private final Specimen specimen;
  /** Thinnest wall to rely on, mm. */
  private final double wall;

  WallConcerns(Specimen specimen) {
    this.specimen = specimen;
    wall = specimen.limit(Limit.WALL);
  }

  /** What is the matter with all of a part that is smaller than a wall, as one in metres: too small to be measured. */
  Optional<Concern> whole() {
    double line = specimen.limit(Limit.LEAST_WALL);
    Measures m = specimen.measures();
    double[] sides = {m.maxX() - m.minX(), m.maxY() - m.minY(), m.maxZ() - m.minZ()};
    Arrays.sort(sides);
    return sides[2] >= wall || !Widths.isBelow(sides[0], line) ? Optional.empty()
        : Optional.of(new Concern("thin-wall", Severity.ERROR, m.centroidX(), m.centroidY(), m.centroidZ(), sides[0], line,
            Limit.LEAST_WALL, m.area(), "all of the part is only " + Words.number(sides[2], 3) + " mm long and "
                + Words.number(sides[0], 3) + " mm thick, thinner than one printed line of " + Widths.hundredths(line)
                + " mm: nothing of it will be printed",
            "Export it in millimetres, if it was drawn in another unit, or make it larger."));
  }

  /** What is the matter with a place, if anything is. */
  Optional<Concern> concern(NarrowPlace place) {
    if (place.isBetweenEdges()) {
      return neck(place);
    }
    // of a neck a little may be held by faces too
    Optional<Concern> neck = place.area(wall) < wall * wall ? place.onEdges().flatMap(this::neck) : Optional.empty();
    if (neck.isPresent() && place.form() != NarrowPlace.Form.STRIP && (place.onEdges().orElseThrow().length() >= wall
        || place.area(specimen.limit(Limit.LEAST_WALL)) < Words.LEAST_AREA)) {
      return neck;
    }
    if (place.isSharp(wall)) {
      return place.isTip(wall) ? Optional.empty() : Optional.of(sharp(place, Severity.CAUTION, Limit.WALL));
    }
    if (place.runsOut(wall)) {
      return Optional.of(sharp(place, Severity.ERROR, Limit.LEAST_WALL));
    }
    double width = place.narrowest().width();
    boolean isWall = place.form() == NarrowPlace.Form.SHEET || place.form() == NarrowPlace.Form.LUMP;
    Limit line = !isWall ? Limit.STROKE : isLevel(place) ? Limit.FLOOR : Limit.LEAST_WALL;
    double least = specimen.limit(line);
    if (Widths.isBelow(width, least)) {
      boolean isSmall = place.form() == NarrowPlace.Form.STRIP && place.area(least) < wall * wall;
      return isSpeck(place) ? Optional.empty()
          : Optional.of(told(place, isSmall ? Severity.CAUTION : Severity.ERROR, line));
    }
    // raised text, low ribs, and webs no larger than a wall is thick carry nothing: one line will do for them
    boolean carries = place.form() != NarrowPlace.Form.STRIP && place.area(wall) >= wall * wall;
    return carries && Widths.isBelow(width, wall) ? Optional.of(told(place, Severity.CAUTION, Limit.WALL)) : neck;
  }

  /** Whether layers lie flat in what is too thin of a wall: as a floor or roof it is as good as closed, or is not. */
  private boolean isLevel(NarrowPlace place) {
    return place.isLevel(Math.max(specimen.limit(Limit.LEAST_WALL), specimen.limit(Limit.FLOOR)));
  }

  /** What inner edges leave between them carries like a wall where it is long or all that is there, else like a rib. */
  private Optional<Concern> neck(NarrowPlace place) {
    boolean carries = place.form() == NarrowPlace.Form.NECK || place.length() >= wall;
    Limit line = carries ? Limit.LEAST_WALL : Limit.STROKE;
    if (Widths.isBelow(place.narrowest().width(), specimen.limit(line))) {
      return Optional.of(told(place, carries ? Severity.ERROR : Severity.CAUTION, line));
    }
    return carries && Widths.isBelow(place.narrowest().width(), wall)
        ? Optional.of(told(place, Severity.CAUTION, Limit.WALL)) : Optional.empty();
  }

  /** Whether it is a ridge between engraved strokes so small that nobody misses it: told, but no concern. */
  private boolean isSpeck(NarrowPlace place) {
    double least = specimen.limit(Limit.STROKE);
    return !place.isSharp(wall) && !place.runsOut(wall) && place.form() == NarrowPlace.Form.STRIP
        && Widths.isBelow(place.narrowest().width(), least) && place.area(least) < SPECK * wall * wall;
  }

  /** How many places are specks, if any are. */
  Optional<Fact> specks(List<NarrowPlace> places) {
    double least = specimen.limit(Limit.STROKE);
    List<NarrowPlace> specks = places.stream().filter(this::isSpeck).toList();
    return specks.stream().max(Comparator.comparingDouble(place -> place.area(least))).map(largest -> new Fact("specks",
        specks.size(), "places", (specks.size() == 1 ? "1 speck" : specks.size() + " specks")
            + " between strokes cut close together, thinner than one printed line of " + Widths.hundredths(least)
            + " mm, may be missing; the largest, " + Widths.at(largest.narrowest().ball().middle()) + ", has "
            + Widths.hundredths(largest.area(least)) + " mm2 of surface"));
  }

  /** A sharp edge: a caution where little is lost, an error where a long way of it is thinner than a line. */
  private Concern sharp(NarrowPlace place, Severity severity, Limit limit) {
    double bound = specimen.limit(limit);
    Vec at = place.narrowest().ball().middle();
    NarrowPlace thin = place.below(bound);
    String over = " mm "
        + (thin.breadth() < TOLD_FROM ? "at its very end" : "over its last " + Widths.hundredths(thin.breadth()) + " mm");
    return new Concern("thin-edge", severity, at.x(), at.y(), at.z(), place.narrowest().width(), bound, limit,
        thin.area(bound), severity == Severity.ERROR
            ? "the part runs out to a sharp edge, thinner than one printed line of " + Widths.hundredths(bound) + over
                + ": that much of it will be missing"
            : "the part runs out to a sharp edge, thinner than " + Widths.hundredths(bound) + over
                + ": it will come out ragged or shorter",
        "Cut the edge off where it is " + Widths.hundredths(wall) + " mm thick, or make it blunter than 25 degrees.");
  }

  private static String fate(Severity severity, Limit limit, String bound, String over) {
    if (limit == Limit.WALL) {
      return "thinner than the " + bound + " to rely on" + over + ": it may come out weak or with holes";
    }
    if (limit == Limit.FLOOR) {
      return "thinner than the " + bound + " that close as a floor or roof" + over
          + ": it will come out with holes, thicker or not at all";
    }
    return "thinner than one printed line of " + bound + over + ": it "
        + (severity == Severity.ERROR ? "will be missing or come out thicker" : "is small and may be missing");
  }

  /** Of a wall that is thinner than a line or a floor in part, how much of it is too thin to rely on in all. */
  private String rest(NarrowPlace place, Limit limit) {
    double all = place.area(wall);
    boolean isWall = limit == Limit.LEAST_WALL || limit == Limit.FLOOR;
    return isWall && all > MORE * place.area(specimen.limit(limit)) && all >= wall * wall
        ? ", and than the " + Widths.hundredths(wall) + " mm to rely on over " + Words.number(all, 1) + " mm2" : "";
  }

  private Concern told(NarrowPlace place, Severity severity, Limit limit) {
    double bound = specimen.limit(limit);
    Vec at = place.narrowest().ball().middle();
    double width = place.narrowest().width();
    String what = switch (place.form()) {
      case ROUND -> "pin";
      case STRIP -> "rib or stroke";
      case SHEET, LUMP -> "wall";
      case NOTCH, NECK -> "neck between inner corners";
    };
    String message = "the " + what + " is " + Widths.hundredths(width) + " mm thick, "
        + fate(severity, limit, Widths.hundredths(bound) + " mm", Widths.over(place, bound) + rest(place, limit));
    String advice = "Make it " + Widths.hundredths(specimen.limit(limit == Limit.STROKE ? Limit.STROKE : Limit.WALL))
        + " mm or thicker, or print with " + (limit == Limit.FLOOR ? "thinner layers." : "a finer nozzle.");
    return new Concern("thin-" + what.split(" ")[0], severity, at.x(), at.y(), at.z(), width, bound, limit,
        place.area(bound), message, advice);
  }
}
