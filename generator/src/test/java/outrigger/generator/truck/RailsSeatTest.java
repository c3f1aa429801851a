package outrigger.generator.truck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;

/** Rails from 40 apart at x -20 to 30 apart at x -180: the left web turns by atan(5/160). */
class RailsSeatTest {
  private static final Shelf SHELF = Shelf.standard();
  private static final double SLOPE = 5.0 / 160;

  private static Rails rails() {
    return Rails.of(ParamValues.record(RailParams.class, SHELF, "spacing", "40", "web", "1.5", "front", "30", "length", "260"),
        List.of(ParamValues.record(RailAt.class, SHELF, "x", "-20", "spacing", "40"),
            ParamValues.record(RailAt.class, SHELF, "x", "-180", "spacing", "30")));
  }

  /** By hand: the magnet's end of the square on the web lies at x; its foot further ahead by reach times the sine. */
  @Test
  void seat_taper_bringsTheMagnetToItsPlace() {
    double angle = Math.atan(SLOPE);
    for (double reach : new double[] {11, -9}) {
      Seat seat = rails().seat(-110, reach);
      assertEquals(-110 + reach * Math.sin(angle), seat.x(), 1e-6);
      double face = 15 + (seat.x() + 180) * SLOPE + (reach > 0 ? 1.5 : 0);
      assertEquals(face, seat.y(), 1e-6);
      assertEquals(face + reach * Math.cos(angle), seat.yOut(reach), 1e-6);
      assertEquals(Math.toDegrees(angle), seat.degrees(), 1e-4);
    }
  }

  /**
   * Over the bend the face runs through the corner at -20, half as steep as the rail behind it: 40 behind and 40 ahead it
   * stands 40 times half the slope off, square to itself. Within the taper it lies flat.
   */
  @Test
  void flatOff_bend_isHalfTheSlopeTimesHalfTheLength() {
    double half = SLOPE / 2;
    assertEquals(40 * half / Math.hypot(1, half), rails().flatOff(-20, 80).mm(), 1e-9);
    assertEquals(40, Math.abs(rails().flatOff(-20, 80).x() + 20), 1e-9);
    assertEquals(0, rails().flatOff(-110, 60).mm(), 1e-9);
    assertEquals(0, rails().footOff(-110, 11, -12, 12).mm(), 1e-9);
    assertTrue(rails().footOff(-20, 11, -12, 12).mm() > 0.1);
  }

  @Test
  void seat_parallel_liesSquareBelow() {
    assertEquals(new Seat(5, 21.5, 0), rails().seat(5, 11));
  }

  /** Against a straight taper the face lies flat; over the bend at -20 it touches there and cuts nothing. */
  @Test
  void flat_taperAndBend_touchAndCutNothing() {
    assertEquals(15 + 70 * SLOPE + 1.5, rails().flat(-110, 60).y(), 1e-9);
    Seat bend = rails().flat(-20, 80);
    double slope = Math.tan(Math.toRadians(bend.degrees()));
    for (double x = -60; x <= 20; x += 0.5) {
      assertTrue(bend.y() + slope * (x + 20) >= rails().at(x).spacing() / 2 + 1.5 - 1e-9, "x " + x);
    }
    assertEquals(21.5, bend.y(), 1e-9);
  }

  /** On a straight taper a foot lies as the web runs, on both faces. */
  @Test
  void foot_taper_isTheSeat() {
    for (double reach : new double[] {11, -9}) {
      Seat seat = rails().seat(-110, reach);
      Seat foot = rails().foot(-110, reach, -12, 15);
      assertEquals(seat.x(), foot.x(), 1e-6);
      assertEquals(seat.y(), foot.y(), 1e-6);
      assertEquals(seat.degrees(), foot.degrees(), 1e-4);
    }
  }

  /** Over bends, the one at -20 that closes in behind and one at -60 that parts again, no foot cuts into a web. */
  @Test
  void foot_bends_touchAndCutNothing() {
    Rails rails = Rails.of(ParamValues.record(RailParams.class, SHELF, "spacing", "40", "web", "1.5", "front", "30",
        "length", "260"), List.of(ParamValues.record(RailAt.class, SHELF, "x", "-20", "spacing", "40"),
        ParamValues.record(RailAt.class, SHELF, "x", "-60", "spacing", "32"),
        ParamValues.record(RailAt.class, SHELF, "x", "-100", "spacing", "44")));
    for (double x = -110; x <= 0; x += 2.5) {
      for (double reach : new double[] {11, -9}) {
        Seat seat = rails.foot(x, reach, -10, 14);
        double slope = Math.tan(Math.toRadians(seat.degrees()));
        double cosine = Math.cos(Math.toRadians(seat.degrees()));
        double least = Double.MAX_VALUE;
        for (double at = seat.x() - 10 * cosine; at <= seat.x() + 14 * cosine; at += 0.01) {
          double face = rails.at(at).spacing() / 2 + (reach > 0 ? 1.5 : 0);
          least = Math.min(least, Math.signum(reach) * (seat.y() + slope * (at - seat.x()) - face));
        }
        assertEquals(0, least, 0.01, "x " + x + ", reach " + reach);
        assertTrue(least > -1e-6, "x " + x + ", reach " + reach + ": " + least);
        assertEquals(x, seat.x() - reach * Math.sin(Math.toRadians(seat.degrees())), 1e-6);
      }
    }
  }

  /** Over a step it lies on the side that stands further out. */
  @Test
  void foot_step_liesOnTheOuterSide() {
    Rails rails = Rails.of(ParamValues.record(RailParams.class, SHELF, "spacing", "40", "web", "1.5", "front", "30",
        "length", "260", "change", "step"), List.of(ParamValues.record(RailAt.class, SHELF, "x", "-20", "spacing", "32")));
    assertEquals(new Seat(-25, 21.5, 0), rails.foot(-25, 11, -10, 10));
    assertEquals(new Seat(-25, 16, 0), rails.foot(-25, -9, -10, 10));
    assertEquals(new Seat(-40, 17.5, 0), rails.foot(-40, 11, -10, 10));
  }
}
