package outrigger.generator.truck;

import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/** Table {@code [drive]}: motor, gears, wheels, steering, and what is towed. */
public record DriveParams(
    @Param(unit = Unit.NONE, min = 1, max = 200000, def = "10000", help = "Motor speed without load, 1/min.")
    double noLoadSpeed,
    @Param(unit = Unit.NONE, min = 0.01, max = 100000, def = "20", help = "Stall torque of the motor, N mm.")
    double stallTorque,
    @Param(unit = Unit.NONE, min = 0.1, max = 2000, def = "30", help = "Turns of the motor for one of the wheels.")
    double gearRatio,
    @Param(unit = Unit.NONE, min = 0.05, max = 1, def = "0.6", help = "Share of the motor's work that reaches the wheels.")
    double efficiency,
    @Param(min = 5, max = 300, def = "40", help = "Diameter of the driven wheels.")
    double wheel,
    @Param(unit = Unit.NONE, max = 2, def = "0.6", help = "Friction of tyre on ground.")
    double grip,
    @Param(unit = Unit.NONE, max = 0.5, def = "0.03", help = "Rolling resistance as a share of the weight.")
    double rolling,
    @Param(unit = Unit.GRAMS, max = 100000, def = "0", help = "Mass towed.")
    double towed,
    @Param(unit = Unit.DEGREES, max = 60, def = "0", help = "Slope it is to climb.")
    double slope,
    @Param(def = "rear", help = "Driven axles.")
    DrivenAxles driven,
    @Param(unit = Unit.DEGREES, min = 1, max = 70, def = "25", help = "Greatest angle of the inner front wheel.")
    double steering) {}
