package outrigger.generator.truck;

import java.util.List;
import java.util.Optional;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/** Table {@code [truck]}: what concerns it as a whole. */
public record TruckParams(
    @Param(unit = Unit.NONE, min = 4, max = 100, def = "24", help = "Scale: 24 is 1:24.")
    double scale,
    @Param(min = 40, max = 800, def = "150", help = "Front axle to rear axle; of a pair of rear axles, to their middle.")
    double wheelbase,
    @Param(min = 20, max = 300, def = "75", help = "Middle to middle of the two wheels of an axle.")
    double track,
    @Param(unit = Unit.GRAMS, max = 20000, def = "400",
        help = "Mass of the chassis with axles, wheels, motor and bumper: all but body, items and printed parts.")
    double chassisMass,
    @Param(min = -1000, max = 1000, def = "", help = "Its centre of gravity [x, y, z]; left out, the middle of the "
        + "wheelbase, on the centre line, 10 mm below the rails' tops.")
    List<Double> chassisCg,
    @Param(min = -300, max = 0, def = "-30", help = "Height of the ground: z under the wheels, below the rails' tops.")
    double ground) {

  public TruckParams {
    chassisCg = List.copyOf(chassisCg);
    Point.of(chassisCg, "chassis-cg");
  }

  /** Centre of gravity of the chassis, where it was given. */
  public Optional<Point> chassisCentre() {
    return Point.of(chassisCg, "chassis-cg");
  }
}
