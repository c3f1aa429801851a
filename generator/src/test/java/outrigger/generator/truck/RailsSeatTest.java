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
}
