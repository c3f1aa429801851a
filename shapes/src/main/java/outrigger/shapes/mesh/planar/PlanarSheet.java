package outrigger.shapes.mesh.planar;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.triangulation.ConstrainedTriangulation;
import outrigger.shapes.mesh.triangulation.Triangulation;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;

/**
 * Outlines that meet or cross, laid into one triangulation across the axis, and the column of the result over each cell.
 *
 * <p>Vertices are grid points or the exact points where two walls cross.
 */
final class PlanarSheet {
  private final Rims rims;
  private final Columns columns;
  private final Faces faces;
  private final int axis;
  /** Number of the plane that rims are laid in, across the axis at height 0. */
  private final int base;
  /** Numbers of the planes across the axis, by height. */
  private final Map<Integer, Integer> levels = new HashMap<>();
  private final ConstrainedTriangulation marks = new ConstrainedTriangulation();
  private final Triangulation tri = marks.triangulation();
  /** Of each segment its rim, whether the rim runs the segment's way, and the plane of its wall. */
  private final IntList rimOf = new IntList();
  private final IntList wayOf = new IntList();
  private final IntList wallOf = new IntList();
  /** Of each triangle its cell, and of each cell its column. */
  private int[] cell = new int[0];
  private int[][] columnOf = new int[0][];

  /**
   * Lays all rims.
   *
   * @param faces gives planes their numbers
   * @param axis the axis the operands stand along
   */
  PlanarSheet(Rims rims, Columns columns, Faces faces, int axis) {
    this.rims = rims;
    this.columns = columns;
    this.faces = faces;
    this.axis = axis;
    base = level(0);
    lay();
    divide();
    walk();
  }

  /** Number of the plane across the axis at a height. */
  int level(int height) {
    return levels.computeIfAbsent(height, this::newLevel);
  }

  private int newLevel(int height) {
    long[] a = point(0, 0, height);
    long[] b = point(1, 0, height);
    long[] c = point(0, 1, height);
    return faces.number(Plane.through(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]));
  }

  /** Number of the plane along the axis through two places. */
  private int wall(int u, int v, int uTo, int vTo) {
    long[] a = point(u, v, 0);
    long[] b = point(uTo, vTo, 0);
    long[] c = point(u, v, 1);
    return faces.number(Plane.through(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]));
  }

  private long[] point(long u, long v, long height) {
    long[] p = new long[3];
    p[(axis + 1) % 3] = u;
    p[(axis + 2) % 3] = v;
    p[axis] = height;
    return p;
  }

  private ExactPoint at(int u, int v) {
    long[] p = point(u, v, 0);
    return ExactPoint.of(p[0], p[1], p[2]);
  }

  private void lay() {
    marks.reset((axis + 1) % 3, (axis + 2) % 3, base, this::crossing);
    for (int r = 0; r < rims.size(); r++) {
      Interrupt.check();
      Rim rim = rims.rim(r);
      tri.insertSpread(rim.size(), i -> tri.insert(at(rim.u[i], rim.v[i])));
      for (int i = 0; i < rim.size(); i++) {
        layEdge(r, rim, i, rim.next(i));
      }
    }
  }

  /** Segments run from their lesser end, so that those that lie on each other run alike. */
  private void layEdge(int r, Rim rim, int i, int j) {
    boolean along = rim.u[i] < rim.u[j] || rim.u[i] == rim.u[j] && rim.v[i] < rim.v[j];
    int from = tri.insert(at(rim.u[along ? i : j], rim.v[along ? i : j]));
    int to = tri.insert(at(rim.u[along ? j : i], rim.v[along ? j : i]));
    int wall = wall(rim.u[i], rim.v[i], rim.u[j], rim.v[j]);
    rimOf.add(r);
    wayOf.add(along ? 1 : 0);
    wallOf.add(wall);
    marks.lay(from, to, rimOf.size() - 1, wall);
  }

  private ExactPoint crossing(int s, int t) {
    return ExactPoint.meeting(faces.plane(base), faces.plane(wallOf.get(s)), faces.plane(wallOf.get(t)))
        .in(base, wallOf.get(s), wallOf.get(t));
  }

  /** Numbers the cells: triangles with no marked edge between them; the one outside all is 0. */
  private void divide() {
    int n = tri.triangleCount();
    cell = new int[n];
    Arrays.fill(cell, -1);
    int[] queue = new int[n];
    int cells = 0;
    for (int seed = -1; seed < n; seed++) {
      int start = seed < 0 ? Triangulation.triangle(tri.out(0)) : seed;
      if (cell[start] >= 0) {
        continue;
      }
      int tail = 0;
      queue[tail++] = start;
      cell[start] = cells;
      for (int head = 0; head < tail; head++) {
        int first = Triangulation.edge(queue[head]);
        for (int h = first; h < first + 3; h++) {
          int next = tri.twin(h) < 0 || tri.mark(h) != Triangulation.FREE ? -1 : Triangulation.triangle(tri.twin(h));
          if (next >= 0 && cell[next] < 0) {
            cell[next] = cells;
            queue[tail++] = next;
          }
        }
      }
      cells++;
    }
    columnOf = new int[cells][];
  }

  /** Goes from triangle to triangle, depth first, and works out each cell's column; on the way back every step is undone. */
  private void walk() {
    int[] way = new int[tri.triangleCount()];
    boolean[] seen = new boolean[tri.triangleCount()];
    int depth = 0;
    int t = Triangulation.triangle(tri.out(0));
    int k = 0;
    enter(t, seen);
    while (true) {
      if (k < 3) {
        int h = Triangulation.edge(t) + k++;
        int g = tri.twin(h);
        if (g >= 0 && !seen[Triangulation.triangle(g)]) {
          cross(h, true);
          way[depth++] = h;
          t = Triangulation.triangle(g);
          k = 0;
          enter(t, seen);
        }
      } else if (depth > 0) {
        int h = way[--depth];
        cross(h, false);
        t = Triangulation.triangle(h);
        k = h - Triangulation.edge(t) + 1;
      } else {
        return;
      }
    }
  }

  private void enter(int t, boolean[] seen) {
    seen[t] = true;
    if (columnOf[cell[t]] == null) {
      columnOf[cell[t]] = columns.column();
    }
  }

  /** Steps over a half-edge from its left to its right, or back: a rim has its inside on its left. */
  private void cross(int h, boolean forward) {
    int node = tri.mark(h);
    boolean along = node > 0;
    for (node = Math.abs(node); node != Triangulation.FREE; node = marks.rest(node)) {
      int s = marks.segment(node);
      boolean insideOnLeft = along == (wayOf.get(s) == 1);
      columns.step(rims.rim(rimOf.get(s)), insideOnLeft != forward);
    }
  }

  Triangulation triangulation() {
    return tri;
  }

  /** The column over a triangle. */
  int[] column(int triangle) {
    return columnOf[cell[triangle]];
  }

  /** Number of the plane of the wall along a marked half-edge. */
  int wall(int h) {
    return wallOf.get(marks.segment(Math.abs(tri.mark(h))));
  }

  /** A vertex of the triangulation lifted to a height. */
  ExactPoint lifted(int vertex, int height) {
    ExactPoint p = tri.point(vertex);
    if (p.isOnGrid()) {
      long[] q = point(p.grid((axis + 1) % 3), p.grid((axis + 2) % 3), height);
      return ExactPoint.of(q[0], q[1], q[2]);
    }
    int level = level(height);
    return ExactPoint.meeting(faces.plane(level), faces.plane(p.plane(1)), faces.plane(p.plane(2)))
        .in(level, p.plane(1), p.plane(2));
  }
}
