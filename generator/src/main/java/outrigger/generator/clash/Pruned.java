package outrigger.generator.clash;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.num.Placement;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Cut;
import outrigger.shapes.solid.Placed;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;

/**
 * A solid with all left out that has no say within a box: cutters and joined solids that do not reach it. Within the
 * box it is the same, outside it may be more or less, but never outside {@link Bounds} of the whole.
 *
 * <p>What is turned by other than quarter turns is kept whole, since it is rounded as a whole.
 */
final class Pruned {
  private final Bounds box;

  private Pruned(Bounds box) {
    this.box = box;
  }

  /** What is left of a solid within a box; empty if none of it reaches there. */
  static Optional<Solid> to(Solid solid, Bounds box) {
    return new Pruned(box).of(solid, Placement.IDENTITY);
  }

  private Optional<Solid> of(Solid solid, Placement placement) {
    if (!Bounds.of(solid.place(placement)).overlaps(box)) {
      return Optional.empty();
    }
    if (solid instanceof Placed placed && placed.placement().turnsQuarterly()) {
      return of(placed.solid(), placed.placement().then(placement)).map(s -> s.place(placed.placement()));
    } else if (solid instanceof Union union) {
      List<Solid> left = union.solids().stream().flatMap(s -> of(s, placement).stream()).toList();
      return left.isEmpty() ? Optional.empty() : Optional.of(new Union(left));
    } else if (solid instanceof Common common) {
      List<Solid> left = common.solids().stream().flatMap(s -> of(s, placement).stream()).toList();
      return left.size() < common.solids().size() ? Optional.empty() : Optional.of(new Common(left));
    } else if (solid instanceof Cut cut) {
      List<Solid> cutters = cut.cutters().stream().flatMap(s -> of(s, placement).stream()).toList();
      return of(cut.solid(), placement).map(s -> s.cut(cutters));
    }
    return Optional.of(solid);
  }
}
