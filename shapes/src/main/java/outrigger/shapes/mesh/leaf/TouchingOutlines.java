package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Takes leaves apart whose profile touches itself. As one operand their surface would meet itself, which no step looks for;
 * as several they touch each other, like any operands.
 */
public final class TouchingOutlines {
  private TouchingOutlines() {}

  /** A straight prism as prisms without holes, joined and cut; nothing where its outlines keep apart. */
  public static Optional<Solid> apart(Prism prism) {
    return Upright.is(prism) ? apart(prism.profile(), p -> Prism.of(p, prism.bottom(), prism.top())) : Optional.empty();
  }

  /** The same of a revolution. */
  public static Optional<Solid> apart(Revolution revolution) {
    return apart(revolution.halfSection(), p -> new Revolution(p, revolution.sides(), revolution.circumscribed()));
  }

  private static Optional<Solid> apart(Profile profile, Function<Profile, Solid> solid) {
    if (!profile.touchesItself()) {
      return Optional.empty();
    }
    List<Solid> regions = new ArrayList<>();
    for (List<Profile> outlines : profile.outlines()) {
      List<Solid> rings = outlines.stream().map(solid).toList();
      regions.add(rings.get(0).cut(rings.subList(1, rings.size())));
    }
    return Optional.of(Solid.union(regions));
  }
}
