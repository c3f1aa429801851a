package outrigger.shapes.print.stand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.layer.Layering;
import outrigger.shapes.print.slice.FlatCircle;
import outrigger.shapes.print.slice.Outline;
import outrigger.shapes.print.slice.Slice;
import outrigger.shapes.print.slice.Slicer;
import outrigger.shapes.print.tree.Plumb;

/**
 * Round holes that open on the bed with no bevel: the first layers bulge into them, and what should fit does not.
 *
 * <p>A pocket, closed above, is taken for a fit up to {@link #WIDEST}: it is there to take a magnet, a pin or a nut. A
 * hole right through most often lets a screw pass with room to spare; what is left of it is told, no more.
 */
final class BedHoles {
  /** Widest hole looked at, mm: common disc magnets and screws are no wider; common practice. */
  private static final double WIDEST = 12;
  /** The first layers bulge over so many layers: common practice says one to three. */
  private static final int BULGING = 3;
  /** Circles about one axis have middles nearer than this, mm. */
  private static final double SAME = 0.05;
  /** Fewer corners are no round hole. */
  private static final int ROUND = 8;

  private final Specimen specimen;
  private final double bulge;
  private final List<Bitten> bitten = new ArrayList<>();

  /** A hole, its radius above the bulge, how far the bulge reaches into it, and whether it is closed above. */
  private record Bitten(FlatCircle hole, double radius, double bite, boolean closed) {
    double left() {
      return 2 * (radius - bite);
    }
  }

  BedHoles(Specimen specimen, Slicer slicer, Slice foot) {
    this.specimen = specimen;
    bulge = specimen.limit(Limit.FOOT);
    Layering layering = Layering.of(specimen);
    List<FlatCircle> low = holes(foot);
    List<FlatCircle> high = low.isEmpty() || layering.count() <= BULGING ? List.of()
        : holes(slicer.at(layering.middle(BULGING)));
    Map<Long, List<FlatCircle>> cells = new HashMap<>();
    high.forEach(circle -> cells.computeIfAbsent(cell(circle, 0, 0), cell -> new ArrayList<>()).add(circle));
    for (FlatCircle hole : low) {
      above(hole, cells).map(circle -> new Bitten(hole, circle.radius(), circle.radius() - hole.radius() + bulge,
          Plumb.isCovered(specimen.facetTree(), hole.x(), hole.y())))
          .filter(b -> b.bite > bulge / 2 && 2 * b.radius <= WIDEST).ifPresent(bitten::add);
    }
  }

  /** The circle that goes on from one about the same axis. */
  private static Optional<FlatCircle> above(FlatCircle hole, Map<Long, List<FlatCircle>> cells) {
    for (int i = -1; i <= 1; i++) {
      for (int j = -1; j <= 1; j++) {
        for (FlatCircle other : cells.getOrDefault(cell(hole, i, j), List.of())) {
          if (Math.hypot(other.x() - hole.x(), other.y() - hole.y()) < SAME) {
            return Optional.of(other);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The square cell so many cells from that of a circle's middle: holes of a plate stand in rows, many at the same x. */
  private static long cell(FlatCircle circle, int right, int back) {
    return ((long) Math.floor(circle.x() / SAME) + right << Integer.SIZE) + (long) Math.floor(circle.y() / SAME) + back;
  }

  private static List<FlatCircle> holes(Slice slice) {
    List<FlatCircle> holes = new ArrayList<>();
    for (double[] loop : slice.loops()) {
      if (loop.length >= 2 * ROUND && Outline.area(loop) < 0) {
        FlatCircle.through(loop).filter(circle -> circle.fits(loop)).ifPresent(holes::add);
      }
    }
    return holes;
  }

  /** A concern for each pocket. */
  List<Concern> concerns() {
    return bitten.stream().filter(Bitten::closed).map(this::concern).toList();
  }

  /** What is left of the holes right through, if there are any. */
  List<Fact> facts() {
    double least = Double.POSITIVE_INFINITY;
    for (Bitten b : bitten) {
      least = b.closed ? least : Math.min(least, b.left());
    }
    return least <= 0 || least == Double.POSITIVE_INFINITY ? List.of() : List.of(new Fact("narrowed-hole", least, "mm",
        "round holes open on the bed without a bevel; bulging first layers leave " + Words.mm(least)
            + " of the narrowest"));
  }

  private Concern concern(Bitten b) {
    return new Concern("elephant-foot", Severity.CAUTION, b.hole.x(), b.hole.y(), specimen.bed(), b.bite, bulge / 2,
        Limit.FOOT, 0,
        "a round pocket of " + Words.mm(2 * b.radius) + " opens on the bed, where the first layers bulge into it and "
            + "leave " + Words.mm(b.left()),
        "Bevel its edge on the bed by " + Words.mm(2 * bulge) + ", or turn the part over.");
  }
}
