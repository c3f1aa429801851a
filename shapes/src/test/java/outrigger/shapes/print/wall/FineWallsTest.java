package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.WallShapes;

/** Sheets of 8 x 6 mm of facets finer than samples, whose least thickness lies at a border, in a corner or in a bowl. */
class FineWallsTest {
  private static final double LENGTH = 8;
  private static final double DEPTH = 6;
  private static final double LEAST = 0.7;

  private static Reading read(double side, DoubleBinaryOperator thickness) {
    return new WallGauge().read(WallShapes.specimen(sheet(side, thickness)));
  }

  private static double thinnest(double side, DoubleBinaryOperator thickness) {
    Fact fact = read(side, thickness).facts().get(0);
    assertEquals("thinnest-wall", fact.name());
    return fact.value();
  }

  @ParameterizedTest
  @CsvSource({"0.02, 0.1", "0.05, 0.2", "0.1, 0.2", "0.15, 0.1", "0.15, 0.25"})
  void read_thinnestAtTheBorder_isFoundThere(double slope, double side) {
    assertEquals(LEAST, thinnest(side, (x, y) -> LEAST + slope * x), 0.004);
    assertEquals(LEAST, thinnest(side, (x, y) -> LEAST + slope * (x + y)), 0.008);
    assertEquals(LEAST, thinnest(side, (x, y) -> LEAST + slope * ((x - 4) * (x - 4) + (y - 3) * (y - 3))), 0.005);
  }

  /** So steep that every ball there rolled out of the corner. */
  @ParameterizedTest
  @CsvSource({"0.132, 0.3", "0.142, 0.3", "0.151, 0.16", "0.151, 0.3"})
  void read_thinnestInACornerWithoutASampleHeld_isFoundThere(double slope, double side) {
    assertEquals(LEAST, thinnest(side, (x, y) -> LEAST + slope * (x + y)), 0.008);
  }

  /** Dips from both sides, too steep for a ball on their faces to be held and too blunt for a drilled hole's tip. */
  @ParameterizedTest
  @CsvSource({"0.4, 0.1", "0.5, 0.1", "0.5, 0.25", "0.6, 0.25", "0.5, 0.5", "0.6, 0.5", "1, 0.5", "0.6, 1", "1, 1"})
  void read_dipsTipToTip_areFoundAtTheirTips(double slope, double side) {
    assertEquals(LEAST, thinnest(side, (x, y) -> LEAST + slope * Math.hypot(x - 4, y - 3)), 0.004);
    assertEquals(LEAST, thinnest(side, (x, y) -> Math.min(1.2, LEAST + slope * Math.hypot(x - 4, y - 3))), 0.004);
  }

  /** A round rim is as thick as the wall it ends, though its faces come closer towards its end. */
  @Test
  void read_roundRim_isNoThinWall() {
    double r = 0.45;
    Reading reading = read(0.05, (x, y) -> {
      double in = Math.min(x, LENGTH - x);
      return in >= r ? 2 * r : Math.max(0.04, 2 * Math.sqrt(r * r - (r - in) * (r - in)));
    });
    assertTrue(reading.concerns().isEmpty(), reading.concerns().toString());
  }

  /** Half the thickness above and half below the plane, squares of a side cut in two. */
  private static Mesh sheet(double side, DoubleBinaryOperator thickness) {
    int across = (int) Math.round(LENGTH / side) + 1;
    int along = (int) Math.round(DEPTH / side) + 1;
    int lower = across * along;
    int[] xyz = new int[6 * lower];
    for (int v = 0; v < lower; v++) {
      double x = v % across * LENGTH / (across - 1);
      double y = v / across * DEPTH / (along - 1);
      for (int k = 0; k < 2; k++) {
        xyz[3 * (v + k * lower)] = (int) Math.round(x * Grid.PER_MM);
        xyz[3 * (v + k * lower) + 1] = (int) Math.round(y * Grid.PER_MM);
        xyz[3 * (v + k * lower) + 2] = (int) Math.round((k - 0.5) * thickness.applyAsDouble(x, y) * Grid.PER_MM);
      }
    }
    List<Integer> corners = new ArrayList<>();
    for (int i = 0; i + 1 < across; i++) {
      for (int j = 0; j + 1 < along; j++) {
        int a = j * across + i;
        square(corners, a, a + across, a + across + 1, a + 1);
        square(corners, lower + a, lower + a + 1, lower + a + across + 1, lower + a + across);
      }
      square(corners, i, i + 1, lower + i + 1, lower + i);
      int last = (along - 1) * across + i;
      square(corners, last + 1, last, lower + last, lower + last + 1);
    }
    for (int j = 0; j + 1 < along; j++) {
      int a = j * across;
      square(corners, a + across, a, lower + a, lower + a + across);
      int b = a + across - 1;
      square(corners, b, b + across, lower + b + across, lower + b);
    }
    return Mesh.of(xyz, corners.stream().mapToInt(i -> i).toArray());
  }

  private static void square(List<Integer> corners, int a, int b, int c, int d) {
    corners.addAll(List.of(a, b, c, a, c, d));
  }
}
