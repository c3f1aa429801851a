package outrigger.shapes.mesh.frame;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.Placement;

class TouchExceptionTest {
  private static Place at(double x, double y, double z) {
    return new Place((int) Grid.fromMm(x), (int) Grid.fromMm(y), (int) Grid.fromMm(z));
  }

  @Test
  void placed_turnedAndMoved_tellsWhereItIsThen() {
    Placement p = Placement.turn(Axis.Z, 30).then(Placement.move(1, 2, 3));
    TouchException point = TouchException.near(at(2, 0, 0)).placed(p);
    assertTrue(point.getMessage().contains("near (2.732, 3.000, 3.000) mm"), point.getMessage());
    TouchException line = TouchException.along(at(2, 0, 0), at(2, 0, 5)).placed(p);
    assertTrue(line.getMessage().contains("from (2.732, 3.000, 3.000) mm to (2.732, 3.000, 8.000) mm"), line.getMessage());
  }
}
