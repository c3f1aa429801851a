package outrigger.generator.clash;

import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;

/** The facets of one element, ready to be asked: coordinates in mm, a tree over their boxes in grid units. */
final class Facets {
  private static final int X = 0;
  private static final int Y = 1;
  private static final int Z = 2;

  private final double[] xyz;
  private final int[] corners;
  private final int[] boxes;
  private final Bounds bounds;
  private final BoxTree tree;

  private Facets(int[] grid, int[] corners) {
    this.corners = corners;
    xyz = new double[grid.length];
    Bounds all = Bounds.NOTHING;
    for (int i = 0; i < grid.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        xyz[i + k] = Grid.toMm(grid[i + k]);
      }
      all = all.with(Bounds.point(xyz[i], xyz[i + Y], xyz[i + Z]));
    }
    bounds = all;
    boxes = boxes(grid, corners);
    tree = BoxTree.of(boxes);
  }

  static Facets of(Mesh mesh) {
    return of(mesh, Placement.IDENTITY);
  }

  /** The facets of a mesh at another place; a placement that mirrors would turn it inside out. */
  static Facets of(Mesh mesh, Placement p) {
    int[] grid = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double x = Grid.toMm(mesh.x(v));
      double y = Grid.toMm(mesh.y(v));
      double z = Grid.toMm(mesh.z(v));
      grid[3 * v + X] = Grid.fromMm(p.x(x, y, z));
      grid[3 * v + Y] = Grid.fromMm(p.y(x, y, z));
      grid[3 * v + Z] = Grid.fromMm(p.z(x, y, z));
    }
    int[] corners = new int[3 * mesh.facetCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    return new Facets(grid, corners);
  }

  private static int[] boxes(int[] grid, int[] corners) {
    int[] boxes = new int[2 * corners.length];
    for (int f = 0; f < corners.length / 3; f++) {
      for (int k = 0; k < 3; k++) {
        int a = grid[3 * corners[3 * f] + k];
        int b = grid[3 * corners[3 * f + 1] + k];
        int c = grid[3 * corners[3 * f + 2] + k];
        boxes[6 * f + k] = Math.min(a, Math.min(b, c));
        boxes[6 * f + 3 + k] = Math.max(a, Math.max(b, c));
      }
    }
    return boxes;
  }

  int count() {
    return corners.length / 3;
  }

  Bounds bounds() {
    return bounds;
  }

  /** Copies x, y, z of a facet's three corners, mm, into an array of nine. */
  void copy(int facet, double[] to) {
    for (int c = 0; c < 3; c++) {
      System.arraycopy(xyz, 3 * corners[3 * facet + c], to, 3 * c, 3);
    }
  }

  /** The box of one facet, mm. */
  Bounds box(int facet) {
    int o = 6 * facet;
    return new Bounds(Grid.toMm(boxes[o]), Grid.toMm(boxes[o + 1]), Grid.toMm(boxes[o + 2]), Grid.toMm(boxes[o + 3]),
        Grid.toMm(boxes[o + 4]), Grid.toMm(boxes[o + 5]));
  }

  /** Gives each facet whose box meets a box. */
  void forEachIn(Bounds b, java.util.function.IntConsumer consumer) {
    tree.forEachOverlap(floor(b.minX()), floor(b.minY()), floor(b.minZ()), ceil(b.maxX()), ceil(b.maxY()),
        ceil(b.maxZ()), consumer);
  }

  private static long floor(double mm) {
    return (long) Math.floor(mm * Grid.PER_MM);
  }

  private static long ceil(double mm) {
    return (long) Math.ceil(mm * Grid.PER_MM);
  }

  /** Whether the box of any facet meets a box. */
  boolean reach(Bounds b) {
    boolean[] met = {false};
    forEachIn(b, facet -> met[0] = true);
    return met[0];
  }

  /**
   * Whether a point off the surface lies within: the facets' solid angles seen from it (Van Oosterom and Strackee, IEEE
   * Trans. Biomed. Eng. 30 (1983) 125) sum to 4 pi within and to 0 without.
   */
  boolean hold(double x, double y, double z) {
    double sum = 0;
    double[] t = new double[9];
    for (int f = 0; f < count(); f++) {
      copy(f, t);
      for (int c = 0; c < 9; c += 3) {
        t[c] -= x;
        t[c + 1] -= y;
        t[c + 2] -= z;
      }
      sum += halfAngle(t);
    }
    return sum > Math.PI;
  }

  private static double halfAngle(double[] t) {
    double a = length(t, 0);
    double b = length(t, 3);
    double c = length(t, 6);
    double det = t[0] * (t[4] * t[8] - t[5] * t[7]) - t[1] * (t[3] * t[8] - t[5] * t[6])
        + t[2] * (t[3] * t[7] - t[4] * t[6]);
    return Math.atan2(det, a * b * c + dot(t, 0, 3) * c + dot(t, 3, 6) * a + dot(t, 6, 0) * b);
  }

  private static double length(double[] t, int i) {
    return Math.sqrt(dot(t, i, i));
  }

  private static double dot(double[] t, int i, int j) {
    return t[i] * t[j] + t[i + 1] * t[j + 1] + t[i + 2] * t[j + 2];
  }

  /** Whether a whole shell of the other, which does not meet this surface, lies within. */
  boolean holdShellOf(Facets other) {
    for (int vertex : other.oneVertexAShell()) {
      if (hold(other.xyz[3 * vertex], other.xyz[3 * vertex + 1], other.xyz[3 * vertex + 2])) {
        return true;
      }
    }
    return false;
  }

  private Iterable<Integer> oneVertexAShell() {
    int[] shell = shells(corners, xyz.length / 3);
    Map<Integer, Integer> first = new HashMap<>();
    for (int corner : corners) {
      first.putIfAbsent(shell[corner], corner);
    }
    return first.values();
  }

  /** A number for each vertex, the same for vertices joined by facets. */
  static int[] shells(int[] corners, int vertices) {
    int[] parent = new int[vertices];
    for (int v = 0; v < vertices; v++) {
      parent[v] = v;
    }
    for (int i = 0; i < corners.length; i++) {
      int a = root(parent, corners[i]);
      int b = root(parent, corners[i / 3 * 3]);
      parent[Math.max(a, b)] = Math.min(a, b);
    }
    for (int v = 0; v < vertices; v++) {
      parent[v] = root(parent, v);
    }
    return parent;
  }

  private static int root(int[] parent, int v) {
    int r = v;
    while (parent[r] != r) {
      parent[r] = parent[parent[r]];
      r = parent[r];
    }
    return r;
  }
}
