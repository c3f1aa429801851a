package outrigger.shapes.print.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** Against the JTS library's intersections. */
class ConvexClipTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final int STARS = 500;

  @Test
  void starsWithHoles_clippedByTriangles() {
    Random random = new Random(4);
    int cut = 0;
    for (int i = 0; i < STARS; i++) {
      double[] star = ring(random, 5 + random.nextInt(30), 2, 5, 1);
      double[] hole = ring(random, 3 + random.nextInt(9), 0.1, 0.7, -1);
      double[] triangle = ring(random, 3, 0.5, 4, 1);
      double x = random.nextDouble() * 8 - 4;
      for (int k = 0; k < triangle.length; k += 2) {
        triangle[k] += x;
      }
      ConvexClip clip = ConvexClip.of(List.of(star, hole), triangle);
      Geometry expected = FACTORY.createPolygon(linear(star), new LinearRing[] {linear(hole)})
          .intersection(FACTORY.createPolygon(linear(triangle)));
      assertEquals(expected.getArea(), clip.area(), 1e-9);
      if (expected.getArea() > 1e-3) {
        cut++;
        assertEquals(expected.getCentroid().getX(), clip.x(), 1e-6);
        assertEquals(expected.getCentroid().getY(), clip.y(), 1e-6);
      }
    }
    assertEquals(STARS, cut, STARS / 4.0);
  }

  @Test
  void edgesInCommon_areNoMatter() {
    double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
    assertEquals(new ConvexClip(4, 1, 1), ConvexClip.of(List.of(square), square));
    assertEquals(2, ConvexClip.of(List.of(square), 0, 0, 2, 0, 2, 2).area());
    assertEquals(0, ConvexClip.of(List.of(square), 2, 0, 3, 0, 3, 2, 2, 2).area());
  }

  /** A star-shaped ring round the origin, counter-clockwise or clockwise; with three corners it is convex. */
  private static double[] ring(Random random, int corners, double least, double most, int sense) {
    double start = random.nextDouble();
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = sense * 2 * Math.PI * (start + (i + 0.4 * random.nextDouble()) / corners);
      double r = least + (most - least) * random.nextDouble();
      ring[2 * i] = r * Math.cos(angle);
      ring[2 * i + 1] = r * Math.sin(angle);
    }
    return ring;
  }

  private static LinearRing linear(double... ring) {
    List<Coordinate> corners = new ArrayList<>(IntStream.range(0, ring.length / 2)
        .mapToObj(i -> new Coordinate(ring[2 * i], ring[2 * i + 1])).toList());
    corners.add(corners.get(0));
    return FACTORY.createLinearRing(corners.toArray(new Coordinate[0]));
  }
}
