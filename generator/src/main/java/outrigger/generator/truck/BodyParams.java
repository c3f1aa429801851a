package outrigger.generator.truck;

import java.util.List;
import java.util.Optional;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/** Table {@code [body]}: the kit body with all that stays in it. */
public record BodyParams(
    @Param(unit = Unit.GRAMS, min = 1, max = 20000, def = "150", help = "Its mass.")
    double mass,
    @Param(min = -1000, max = 1000, def = "", help = "Its centre of gravity [x, y, z]; left out, the middle of the "
        + "mounts, 20 mm above its floor.")
    List<Double> cg,
    @Param(unit = Unit.NONE, min = 0.1, max = 100, def = "5",
        help = "Jolt it must stay on through, as a multiple of its weight.")
    double shock,
    @Param(unit = Unit.NONE, min = 0.1, max = 1, def = "0.75", help = "Share of the weakest pull that is counted on.")
    double derating,
    @Param(unit = Unit.NONE, max = 1, def = "0.15", help = "Friction of the faces, as a share of the pull.")
    double friction,
    @Param(unit = Unit.CELSIUS, min = -40, max = 200, def = "40", help = "How hot the magnets get.")
    double temperature,
    @Param(max = 0.1, def = "0.015", help = "Plating on the face of each magnet.")
    double plating,
    @Param(unit = Unit.DEGREES, max = 20, def = "0.5", help = "How far from level it may sit, nose up or to a side.")
    double level) {

  public BodyParams {
    cg = List.copyOf(cg);
    Point.of(cg, "cg");
  }

  /** Its centre of gravity, where it was given. */
  public Optional<Point> centre() {
    return Point.of(cg, "cg");
  }
}
