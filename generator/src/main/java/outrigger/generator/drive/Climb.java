package outrigger.generator.drive;

import java.util.function.DoubleUnaryOperator;
import outrigger.generator.truck.DriveParams;
import outrigger.generator.truck.DrivenAxles;

/** The forces on a truck that climbs a slope, perhaps with a trailer; angles in radians, forces in N. */
final class Climb {
  private static final double UPRIGHT = Math.PI / 2;
  private static final int HALVINGS = 60;
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double MM_PER_METRE = 1000;

  private final DriveParams drive;
  private final Vehicle vehicle;

  Climb(DriveParams drive, Vehicle vehicle) {
    this.drive = drive;
    this.vehicle = vehicle;
  }

  /** What the motor pushes with at stall. */
  double stallForce() {
    return drive.efficiency() * drive.gearRatio() * drive.stallTorque() / (drive.wheel() / 2);
  }

  /** Speed without any load, m/s. */
  double freeSpeed() {
    return drive.noLoadSpeed() / drive.gearRatio() * Math.PI * drive.wheel() / SECONDS_PER_MINUTE / MM_PER_METRE;
  }

  /** Share of its weight that a vehicle holds back with: the slope and rolling. */
  double drag(double slope) {
    return StrictMath.sin(slope) + drive.rolling() * StrictMath.cos(slope);
  }

  /** What it takes to pull truck and trailer. */
  double need(double slope, double towedWeight) {
    return (vehicle.weight() + towedWeight) * drag(slope);
  }

  /** Speed it climbs at, m/s; 0 where the motor stalls. */
  double speed(double slope, double towedWeight) {
    return Math.max(0, freeSpeed() * (1 - need(slope, towedWeight) / stallForce()));
  }

  /** Load on the driven axles. A trailer pulls at the height of the axles. */
  double drivenLoad(double slope, double pull) {
    double all = vehicle.weight() * StrictMath.cos(slope);
    double rear = (all * vehicle.behind() + vehicle.weight() * StrictMath.sin(slope) * vehicle.height()
        + pull * drive.wheel() / 2) / vehicle.wheelbase();
    return Math.max(0, drive.driven() == DrivenAxles.ALL ? all
        : drive.driven() == DrivenAxles.REAR ? Math.min(all, rear) : all - rear);
  }

  /** What the tyres grip less what it takes; below 0 they slip. */
  double gripLeft(double slope, double towedWeight) {
    return drive.grip() * drivenLoad(slope, towedWeight * drag(slope)) - need(slope, towedWeight);
  }

  /** Steepest slope before the motor stalls, or -1 where it stalls on the level. */
  double motorSlope(double towedWeight) {
    return steepest(slope -> stallForce() - need(slope, towedWeight));
  }

  /** Steepest slope before the tyres slip, or -1 where they slip on the level. */
  double tyreSlope(double towedWeight) {
    return steepest(slope -> gripLeft(slope, towedWeight));
  }

  /** Heaviest trailer, N, before a reserve is used up; 0 where there is none, infinite where nothing holds it back. */
  static double heaviest(DoubleUnaryOperator left) {
    if (left.applyAsDouble(0) < 0) {
      return 0;
    }
    double high = 1;
    while (left.applyAsDouble(high) >= 0) {
      high *= 2;
      if (high > 1e9) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return halve(left, 0, high);
  }

  double motorTrailer(double slope) {
    return heaviest(weight -> stallForce() - need(slope, weight));
  }

  double tyreTrailer(double slope) {
    return heaviest(weight -> gripLeft(slope, weight));
  }

  private static double steepest(DoubleUnaryOperator left) {
    if (left.applyAsDouble(0) < 0) {
      return -1;
    }
    // The first slope on a coarse scale where it fails: the reserve need not fall all the way up.
    double step = UPRIGHT / 900;
    for (int i = 1; i <= 900; i++) {
      if (left.applyAsDouble(i * step) < 0) {
        return halve(left, (i - 1) * step, i * step);
      }
    }
    return UPRIGHT;
  }

  /** Where a reserve that is left at low and used up at high runs out. */
  private static double halve(DoubleUnaryOperator left, double low, double high) {
    double from = low;
    double to = high;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (from + to) / 2;
      if (left.applyAsDouble(middle) >= 0) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
