package outrigger.shapes.mesh.triangulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;

/** Sweeps of random loops, beside the triangulation that takes points one by one. */
class FaceSweepTest {
  private static final int SEED = 11;
  private static final int CELL = 1000;

  /** Loops that do not meet, each corner followed by the next of its loop. */
  private static final class Loops {
    final List<ExactPoint> points = new ArrayList<>();
    final List<Integer> after = new ArrayList<>();

    void add(int[][] corners) {
      int first = points.size();
      for (int[] corner : corners) {
        points.add(ExactPoint.of(corner[0], corner[1], 0));
        after.add(points.size());
      }
      after.set(points.size() - 1, first);
    }

    /** A star round a middle, with corners between two radii on its spokes; few radii make many corners in line. */
    void addStar(Random random, int x, int y, int least, int most, int step) {
      int n = 3 + random.nextInt(12);
      int[][] corners = new int[n][];
      for (int i = 0; i < n; i++) {
        int r = least + random.nextInt((most - least) / step + 1) * step;
        double angle = 2 * Math.PI * i / n;
        corners[i] = new int[] {x + (int) Math.round(r * Math.cos(angle)), y + (int) Math.round(r * Math.sin(angle))};
      }
      add(corners);
    }

    int[] after() {
      return after.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Twice the area, holes less. */
    long area(Triangulation tri) {
      long sum = 0;
      for (int t = 0; t < tri.triangleCount(); t++) {
        ExactPoint a = tri.point(tri.origin(Triangulation.edge(t)));
        ExactPoint b = tri.point(tri.origin(Triangulation.edge(t) + 1));
        ExactPoint c = tri.point(tri.origin(Triangulation.edge(t) + 2));
        long area = (b.grid(0) - a.grid(0)) * (c.grid(1) - a.grid(1)) - (b.grid(1) - a.grid(1)) * (c.grid(0) - a.grid(0));
        assertTrue(area > 0, "a triangle turns the wrong way");
        sum += area;
      }
      return sum;
    }
  }

  /** A plate of cells, in most of them a hole, in some holes an island. */
  private static Loops plate(Random random, int across) {
    Loops loops = new Loops();
    int side = across * CELL;
    loops.add(new int[][] {{0, 0}, {side / 2, 0}, {side, 0}, {side, side}, {0, side}, {0, side / 3}});
    for (int i = 0; i < across * across; i++) {
      int x = i % across * CELL + CELL / 2;
      int y = i / across * CELL + CELL / 2;
      int kind = random.nextInt(4);
      if (kind > 0) {
        loops.addStar(random, x, y, 300, 480, random.nextBoolean() ? 1 : 90);
      }
      if (kind > 2) {
        loops.addStar(random, x, y, 20, 70, 10);
      }
    }
    return loops;
  }

  /** The triangles that the points inserted one by one and the edges laid one by one give. */
  private static Set<String> oneByOne(Loops loops) {
    ConstrainedTriangulation marks = new ConstrainedTriangulation();
    marks.reset(0, 1, 0, (s, t) -> {
      throw new IllegalStateException("loops meet");
    });
    Triangulation tri = marks.triangulation();
    int[] vertex = loops.points.stream().mapToInt(tri::insert).toArray();
    for (int i = 0; i < vertex.length; i++) {
      marks.lay(vertex[i], vertex[loops.after.get(i)], i, ConstrainedTriangulation.NO_LINE);
    }
    boolean[] inside = FaceTriangulator.inside(tri);
    Set<String> all = new TreeSet<>();
    for (int t = 0; t < inside.length; t++) {
      if (inside[t]) {
        all.add(words(tri, t));
      }
    }
    return all;
  }

  private static Set<String> triangles(Triangulation tri) {
    Set<String> all = new TreeSet<>();
    for (int t = 0; t < tri.triangleCount(); t++) {
      all.add(words(tri, t));
    }
    return all;
  }

  /** A triangle in words that do not depend on which corner is its first. */
  private static String words(Triangulation tri, int t) {
    List<String> corners = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      ExactPoint p = tri.point(tri.origin(Triangulation.edge(t) + k));
      corners.add(p.grid(0) + "," + p.grid(1));
    }
    while (!corners.get(0).equals(Collections.min(corners))) {
      Collections.rotate(corners, 1);
    }
    return corners.toString();
  }

  @Test
  void cut_plateWithHolesAndIslands_isTheConstrainedDelaunayTriangulation() {
    FaceSweep sweep = new FaceSweep();
    for (int round = 0; round < 150; round++) {
      Loops loops = plate(new Random(SEED + round), 1 + round % 9);
      Triangulation tri = sweep.cut(loops.after(), loops.points::get, 0, 1, 0);
      assertEquals(oneByOne(loops), triangles(tri), "round " + round);
    }
  }

  /** Stars whose corners stand on few lines: many in line, many above one another. */
  @Test
  void cut_starsOnACoarseGrid_isTheConstrainedDelaunayTriangulation() {
    FaceSweep sweep = new FaceSweep();
    for (int round = 0; round < 2000; round++) {
      Loops loops = new Loops();
      Random random = new Random(SEED + round);
      loops.addStar(random, 0, 0, 6, 12, 2);
      loops.addStar(random, 40, 0, 9, 15, 3);
      Triangulation tri = sweep.cut(loops.after(), loops.points::get, 0, 1, 0);
      assertEquals(oneByOne(loops), triangles(tri), "round " + round);
      assertEquals(loops.points.size() - 4, tri.triangleCount(), "n - 2 each");
    }
  }

  /** Corners that lie off the grid, where planes z = 0, x / 3 + y / 7 = c and so on meet: the same area, no corner lost. */
  @Test
  void cut_cornersOffTheGrid_coversTheFace() {
    for (int round = 0; round < 300; round++) {
      Random random = new Random(SEED + round);
      ExactPoint[] points = new ExactPoint[8];
      for (int i = 0; i < 8; i++) {
        double a = 2 * Math.PI * i / 8;
        int r = 1 + random.nextInt(3);
        Plane one = tilted(r, a + 1);
        Plane other = tilted(r, a - 1);
        points[i] = ExactPoint.meeting(Plane.through(0, 0, 0, 1, 0, 0, 0, 1, 0), one, other);
      }
      int[] after = {1, 2, 3, 4, 5, 6, 7, 0};
      Triangulation tri = new FaceSweep().cut(after, i -> points[i], 0, 1, 0);
      assertEquals(6, tri.triangleCount());
      for (int t = 0; t < 6; t++) {
        int h = Triangulation.edge(t);
        assertTrue(tri.turn(tri.origin(h), tri.origin(h + 1), tri.origin(h + 2)) > 0, "round " + round);
      }
    }
  }

  /** An upright plane some grid steps from the origin, across a direction. */
  private static Plane tilted(int distance, double angle) {
    long x = Math.round(10 * distance * Math.cos(angle));
    long y = Math.round(10 * distance * Math.sin(angle));
    return Plane.through(x, y, 0, x - y, y + x, 0, x, y, 7);
  }
}
