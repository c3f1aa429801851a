package outrigger.generator.accessory.body;

import java.util.Optional;
import outrigger.generator.accessory.feature.Fit;
import outrigger.presets.Nut;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.presets.StockLengths;

/** The shortest screw one can buy that holds a flange to its rail. */
final class ScrewLength {
  private ScrewLength() {}

  /** Whether the screw goes through flange and web into a loose nut. */
  static boolean isThrough(BodyMountParams p) {
    return p.fit() == Fit.FINE || p.fit() == Fit.MEDIUM || p.fit() == Fit.COARSE;
  }

  /** Length by the way of the screw's standard, mm; empty where the tables do not list the screw or it is too short. */
  static Optional<Double> of(BodyMountLayout l, Shelf shelf) {
    double least = least(l, shelf);
    return shelf.items(StockLengths.class).stream().filter(s -> s.name().equals(l.p().screw().name()))
        .flatMap(s -> s.lengths().stream()).filter(length -> length >= least - 1e-9).sorted().findFirst();
  }

  private static double least(BodyMountLayout l, Shelf shelf) {
    BodyMountParams p = l.p();
    double rail = p.rail().form().equals("box") ? p.rail().flange() : p.rail().web();
    if (!isThrough(p)) {
      return rail + p.flangeThickness();
    }
    Screw screw = p.screw();
    // One pitch of thread stands out of the nut: its first turn does not carry; common practice.
    double beyond = BodyMountNotes.nut(screw, shelf).map(Nut::height).orElse(screw.diameter()) + screw.pitch();
    double sunk = switch (p.headSeat()) {
      case COUNTERBORE -> l.hole().hole().recess();
      case WASHER -> screw.headHeight(); // the washer lies under the head again
      case NONE, COUNTERSINK -> 0;
    };
    return p.flangeThickness() - sunk + rail + beyond;
  }
}
