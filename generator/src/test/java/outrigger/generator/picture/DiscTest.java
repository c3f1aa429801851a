package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.print.FacetField;

class DiscTest {
  private static final double[][] FACET = {{-9, -9, 0}, {9, -9, 0}, {0, 9, 0}};

  /** Places painted side by side, each for a circle, leave no specks between them. */
  @Test
  void on_insideOfAFacet_holdsTheWholeCircle() {
    FacetField.Place place = new FacetField.Place(0.3, -2, 0, 0.6, 90);
    List<double[]> spot = Disc.on(place, new double[] {0, 0, 1}, FACET);
    Random random = new Random(8);
    for (int i = 0; i < 1000; i++) {
      double angle = 2 * Math.PI * random.nextDouble();
      double x = place.x() + 0.6 * StrictMath.cos(angle);
      double y = place.y() + 0.6 * StrictMath.sin(angle);
      for (int k = 0; k < spot.size(); k++) {
        double[] a = spot.get(k);
        double[] b = spot.get((k + 1) % spot.size());
        double turn = (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
        assertTrue(turn > -1e-9, "outside at an angle of " + angle);
      }
    }
  }
}
