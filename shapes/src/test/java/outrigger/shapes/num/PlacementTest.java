package outrigger.shapes.num;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlacementTest {
  private static Placement turns(double... degrees) {
    Placement all = Placement.IDENTITY;
    for (double d : degrees) {
      all = all.then(Placement.turn(Axis.Y, d));
    }
    return all;
  }

  /** In doubles, cosines and sines of turns that cancel out leave a last bit standing. */
  @Test
  void onGrid_turnsThatCancelOut_isIdentity() {
    for (int degrees = 1; degrees < 360; degrees++) {
      assertEquals(Placement.IDENTITY, turns(degrees, -degrees).onGrid(), "after " + degrees);
      assertTrue(turns(degrees, -degrees).onGrid().keepsGrid());
    }
  }

  @Test
  void onGrid_turnsThatMakeAQuarter_isThatQuarter() {
    assertEquals(Placement.turn(Axis.Y, 90), turns(75, 15).onGrid());
    assertEquals(Placement.turn(Axis.Y, 270), turns(100, 100, 70).onGrid());
  }

  /** A step turned by 120 degrees is half a step back, or a last bit less: all halves go one way, wherever they lie. */
  @Test
  void onGrid_halfAStepButForALastBit_goesOneWay() {
    Placement half = Placement.move(-Grid.STEP, 0, 0).then(Placement.turn(Axis.Z, 120));
    for (int steps = -5000; steps < 5000; steps++) {
      Placement moved = half.then(Placement.move(Grid.toMm(7L * steps), 0, 0));
      assertEquals(Grid.toMm(7L * steps + 1), moved.onGrid().tx(), "after " + steps);
    }
  }

  @Test
  void turnsQuarterly_aMillionthOfARadian_isNone() {
    assertFalse(turns(Math.toDegrees(1e-6)).turnsQuarterly());
    assertFalse(turns(90 + Math.toDegrees(1e-9)).turnsQuarterly());
  }

  @Test
  void inverse_turnedMirroredAndMoved_takesBack() {
    Placement p = Placement.turn(Axis.X, 33).then(Placement.mirror(Axis.Y)).then(Placement.move(1, -2, 3))
        .then(Placement.turn(Axis.Z, 71));
    assertEquals(Placement.IDENTITY, p.then(p.inverse()).onGrid());
    assertEquals(Placement.IDENTITY, p.inverse().then(p).onGrid());
  }
}
