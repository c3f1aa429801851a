package outrigger.shapes.mesh.triangulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.exact.Sign;

/** Triangulations of random segments that cross, overlap and end on each other. */
class ConstrainedTriangulationTest {
  private static final int SEED = 7;

  /** Lays random segments of the plane z = 0; each stands in a plane of its own, upright. */
  private static final class Laid {
    final List<ExactPoint[]> segments = new ArrayList<>();
    final ConstrainedTriangulation marks = new ConstrainedTriangulation();
    final Triangulation tri = marks.triangulation();

    Laid() {
      marks.reset(0, 1, 0,
          (s, t) -> ExactPoint.meeting(Plane.through(0, 0, 0, 1, 0, 0, 0, 1, 0), upright(s), upright(t)));
    }

    Plane upright(int s) {
      ExactPoint a = segments.get(s)[0];
      ExactPoint b = segments.get(s)[1];
      return Plane.through(a.grid(0), a.grid(1), 0, b.grid(0), b.grid(1), 0, a.grid(0), a.grid(1), 1);
    }

    void lay(ExactPoint a, ExactPoint b) {
      segments.add(new ExactPoint[] {a, b});
      int from = tri.insert(a);
      marks.lay(from, tri.insert(b), segments.size() - 1, ConstrainedTriangulation.NO_LINE);
    }
  }

  private static Laid random(Random random, int range, int count) {
    Laid laid = new Laid();
    while (laid.segments.size() < count) {
      ExactPoint a = ExactPoint.of(random.nextInt(range), random.nextInt(range), 0);
      ExactPoint b = ExactPoint.of(random.nextInt(range), random.nextInt(range), 0);
      if (!a.equals(b)) {
        laid.lay(a, b);
      }
    }
    return laid;
  }

  private static int[] halfEdges(Triangulation tri) {
    return IntStream.range(0, 3 * tri.triangleCount()).map(i -> Triangulation.edge(i / 3) + i % 3).toArray();
  }

  @Test
  void lay_randomSegments_coversEachSegmentWholly() {
    for (int round = 0; round < 60; round++) {
      Laid laid = random(new Random(SEED + round), round % 2 == 0 ? 12 : 100_000, 40);
      for (int s = 0; s < laid.segments.size(); s++) {
        ExactPoint[] ends = laid.segments.get(s);
        double length = Math.hypot(ends[1].rough(0) - ends[0].rough(0), ends[1].rough(1) - ends[0].rough(1));
        assertEquals(length, marked(laid, s), length * 1e-9, "round " + round + ", segment " + s);
      }
    }
  }

  private static double marked(Laid laid, int segment) {
    double sum = 0;
    Triangulation tri = laid.tri;
    for (int h : halfEdges(tri)) {
      for (int node = Math.max(0, tri.mark(h)); node != Triangulation.FREE; node = laid.marks.rest(node)) {
        if (laid.marks.segment(node) == segment) {
          ExactPoint a = tri.point(tri.origin(h));
          ExactPoint b = tri.point(tri.destination(h));
          sum += Math.hypot(b.rough(0) - a.rough(0), b.rough(1) - a.rough(1));
        }
      }
    }
    return sum;
  }

  @Test
  void lay_randomSegments_allTrianglesTurnCounterClockwise() {
    for (int round = 0; round < 60; round++) {
      Laid laid = random(new Random(SEED + round), round % 2 == 0 ? 12 : 100_000, 40);
      Triangulation tri = laid.tri;
      for (int t = 0; t < tri.triangleCount(); t++) {
        int h = Triangulation.edge(t);
        assertTrue(tri.turn(tri.origin(h), tri.origin(h + 1), tri.origin(h + 2)) > 0, "round " + round);
      }
      for (int h : halfEdges(tri)) {
        assertTrue(tri.twin(h) < 0 || tri.twin(tri.twin(h)) == h && tri.origin(tri.twin(h)) == tri.destination(h)
            && tri.mark(h) == -tri.mark(tri.twin(h)), "round " + round);
      }
    }
  }

  /** The empty-circle property of Delaunay (1934), on grid points. */
  @Test
  void insert_gridPoints_unmarkedEdgesAreDelaunay() {
    Random random = new Random(SEED);
    Triangulation tri = new Triangulation();
    tri.reset(0, 1, 0);
    for (int i = 0; i < 2000; i++) {
      tri.insert(ExactPoint.of(random.nextInt(200), random.nextInt(200), 0));
    }
    for (int h : halfEdges(tri)) {
      if (tri.twin(h) >= 0) {
        ExactPoint a = tri.point(tri.origin(h));
        ExactPoint b = tri.point(tri.destination(h));
        ExactPoint c = tri.point(tri.origin(Triangulation.previous(h)));
        ExactPoint d = tri.point(tri.origin(Triangulation.previous(tri.twin(h))));
        assertTrue(Sign.inCircle(a.grid(0), a.grid(1), b.grid(0), b.grid(1), c.grid(0), c.grid(1), d.grid(0),
            d.grid(1)) <= 0);
      }
    }
  }

  @Test
  void insert_samePointTwice_findsTheVertex() {
    Triangulation tri = new Triangulation();
    tri.reset(0, 1, 0);
    int a = tri.insert(ExactPoint.of(5, 5, 0));
    tri.insert(ExactPoint.of(9, 5, 0));
    assertEquals(a, tri.insert(ExactPoint.of(5, 5, 0)));
  }
}
