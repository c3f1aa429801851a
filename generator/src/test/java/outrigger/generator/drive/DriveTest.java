package outrigger.generator.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.generator.truck.DriveParams;
import outrigger.generator.truck.DrivenAxles;

/** Driving against examples worked by hand. */
class DriveTest {
  /** 1 kg, 600 g of it on the rear axle; 50 mm high. */
  private static final Vehicle TRUCK = new Vehicle(1000, 90, 50, 150, 75);

  private static DriveParams drive(double torque, double grip, double rolling, double towed, double slope,
      DrivenAxles driven) {
    return new DriveParams(12000, torque, 30, 0.6, 40, grip, rolling, towed, slope, driven, 25);
  }

  /** 12000 / 30 = 400 turns a minute of a 40 mm wheel: 400 x 125.66 mm / 60 s = 0.83776 m/s. */
  @Test
  void freeSpeed_isTurnsTimesCircumference() {
    assertEquals(0.837758, Drive.of(drive(5, 0.6, 0.03, 0, 0, DrivenAxles.REAR), TRUCK).freeSpeed(), 1e-6);
  }

  /** 0.6 x 30 x 5 N mm / 20 mm = 4.5 N; rolling takes 0.03 x 9.80665 N = 0.2942 N of it. */
  @Test
  void levelSpeed_fallsByTheShareOfStallForce() {
    Drive drive = Drive.of(drive(5, 0.6, 0.03, 0, 0, DrivenAxles.REAR), TRUCK);
    assertEquals(4.5, drive.pull(), 1e-12);
    assertEquals(0.837758 * (1 - 0.2941995 / 4.5), drive.levelSpeed(), 1e-6);
  }

  /** sin a + 0.03 cos a = 4.5 / 9.80665, so a = asin(0.458872 / 1.00045) - atan 0.03 = 27.3019 - 1.7184 degrees. */
  @Test
  void motorSlope_isTheArcsine() {
    Drive drive = Drive.of(drive(5, 2, 0.03, 0, 0, DrivenAxles.ALL), TRUCK);
    assertEquals(25.5843, drive.motorSlope(), 2e-3);
    assertTrue(drive.motorGivesUpFirst());
  }

  /** tan a = (0.6 x 0.6 - 0.03) / (1 - 0.6 x 50 / 150) = 0.33 / 0.8: 22.4157 degrees. */
  @Test
  void tyreSlope_rearDriven_gainsLoadUphill() {
    Drive drive = Drive.of(drive(20, 0.6, 0.03, 0, 0, DrivenAxles.REAR), TRUCK);
    assertEquals(Math.toDegrees(Math.atan(0.33 / 0.8)), drive.tyreSlope(), 1e-9);
    assertFalse(drive.motorGivesUpFirst());
    assertEquals(0.36 * 9.80665, drive.grip(), 1e-9);
  }

  /** tan a = (0.6 x 0.4 - 0.03) / (1 + 0.6 x 50 / 150) = 0.21 / 1.2. */
  @Test
  void tyreSlope_frontDriven_losesLoadUphill() {
    assertEquals(Math.toDegrees(Math.atan(0.21 / 1.2)),
        Drive.of(drive(20, 0.6, 0.03, 0, 0, DrivenAxles.FRONT), TRUCK).tyreSlope(), 1e-9);
  }

  /** All wheels on dry ground without rolling resistance slip where tan a is the friction. */
  @Test
  void tyreSlope_allDriven_isTheAngleOfFriction() {
    assertEquals(Math.toDegrees(Math.atan(0.6)),
        Drive.of(drive(20, 0.6, 0, 0, 0, DrivenAxles.ALL), TRUCK).tyreSlope(), 1e-9);
  }

  /** On the level 4.5 N at 0.03 move 150 N: 15.2957 kg, the truck's own 1 kg among them. */
  @Test
  void motorTrailer_level_isForceByRolling() {
    assertEquals(4.5 / 0.03 / 9.80665 * 1000 - 1000,
        Drive.of(drive(5, 0.6, 0.03, 0, 0, DrivenAxles.REAR), TRUCK).motorTrailer(), 1e-3);
  }

  /** Pull P at 20 mm height: 0.6 (5.88399 + P 20/150) = 0.2942 + P, so P = 3.236195 / 0.92 and P / 0.03 is the weight. */
  @Test
  void tyreTrailer_level_pressesOnTheRearAxle() {
    double pull = (0.6 * 0.6 * 9.80665 - 0.03 * 9.80665) / (1 - 0.6 * 20 / 150);
    assertEquals(pull / 0.03 / 9.80665 * 1000,
        Drive.of(drive(5, 0.6, 0.03, 0, 0, DrivenAxles.REAR), TRUCK).tyreTrailer(), 1e-3);
  }

  @Test
  void climbs_tooHeavyATrailer_stalls() {
    Drive drive = Drive.of(drive(5, 2, 0.03, 20000, 0, DrivenAxles.ALL), TRUCK);
    assertEquals(0, drive.levelSpeed());
    assertFalse(drive.climbs());
    assertTrue(drive.lines(24).get(2).contains("does not move off: the motor stalls"), drive.lines(24).get(2));
  }

  /** Wheelbase 150, inner wheel at 45 degrees: the middle lies 150 beside the inner wheel; 225 to the outer one. */
  @Test
  void turning_fortyFiveDegrees_isPythagoras() {
    Turning turning = Turning.of(150, 75, 45);
    assertEquals(150, turning.inner(), 1e-9);
    assertEquals(2 * Math.sqrt(225 * 225 + 150 * 150), turning.circle(), 1e-9);
    assertEquals(33.690068, turning.outerAngle(), 1e-6);
  }

  @Test
  void lines_sayWhoGivesUp() {
    Drive drive = Drive.of(drive(5, 0.6, 0.03, 500, 10, DrivenAxles.REAR), TRUCK);
    assertEquals(6, drive.lines(24).size());
    assertTrue(drive.lines(24).get(2).startsWith("With 500 g in tow it climbs up to "), drive.lines(24).get(2));
  }
}
