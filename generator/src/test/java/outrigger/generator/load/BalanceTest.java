package outrigger.generator.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.TruckParams;

/** Axle loads and tipping against statics by hand. */
class BalanceTest {
  private static final TruckParams TRUCK = new TruckParams(24, 150, 75, 400, List.of(), -30);

  private static Balance balance(Mass... masses) {
    return Balance.of(List.of(masses), TRUCK);
  }

  /** Moments about the front axle: (400 x 75 + 200 x 15 + 100 x 180) / 150 = 51000 / 150 = 340 g of 700 g behind. */
  @Test
  void rear_threeMasses_isMomentByWheelbase() {
    Balance balance = balance(new Mass("chassis", 400, new Point(-75, 0, -10)), new Mass("body", 200,
        new Point(-15, 0, 40)), new Mass("load", 100, new Point(-180, 0, 25)));
    assertEquals(340, balance.rear(), 1e-9);
    assertEquals(360, balance.front(), 1e-9);
    assertEquals(100 * 340 / 700.0, balance.rearPercent(), 1e-9);
    // (-4000 + 8000 + 2500) / 700 over the rails' tops, and these 30 over the ground.
    assertEquals(6500 / 700.0 + 30, balance.height(), 1e-9);
  }

  @Test
  void tips_squareHeightAndHalfTrack_atFortyFiveDegrees() {
    Balance balance = balance(new Mass("all", 500, new Point(-50, 0, 7.5)));
    assertEquals(45, balance.sideTip(), 1e-9);
    assertEquals(Math.toDegrees(Math.atan(100 / 37.5)), balance.rearTip(), 1e-9);
    assertEquals(Math.toDegrees(Math.atan(50 / 37.5)), balance.frontTip(), 1e-9);
  }

  @Test
  void sideTip_offTheMiddle_isLess() {
    assertEquals(Math.toDegrees(Math.atan(32.5 / 37.5)), balance(new Mass("all", 1, new Point(-50, -5, 7.5))).sideTip(),
        1e-9);
  }

  @Test
  void stands_aheadOfTheFrontAxle_doesNot() {
    Balance balance = balance(new Mass("all", 10, new Point(3, 0, 0)));
    assertFalse(balance.stands());
    assertTrue(balance.lines().get(2).startsWith("It does not stand"));
  }

  @Test
  void of_nothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> balance(new Mass("air", 0, new Point(0, 0, 0))));
  }
}
