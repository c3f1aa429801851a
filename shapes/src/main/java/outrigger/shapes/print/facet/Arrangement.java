package outrigger.shapes.print.facet;

import java.util.Arrays;
import outrigger.shapes.exact.BoxOrder;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Workers;

/**
 * The facets of a mesh in an order that hangs on their places alone, so that nothing told of a part hangs on the order in
 * which its file lists them: along a space-filling curve, those about one place by their corners, each from its least corner
 * on. Facets near each other in place are near in memory too.
 */
public final class Arrangement {
  private static final int AXES = 3;
  private static final int SIDES = 2 * AXES;
  /** Runs up to so many facets are sorted by insertion: longer ones are rare. */
  private static final int SHORT = 16;
  /** Facets that are worth a thread: own choice. */
  private static final int AT_ONCE = 1 << 14;

  private final Mesh mesh;
  private final int[] given;
  private final long[] places;

  private Arrangement(Mesh mesh, int[] given, long[] places) {
    this.mesh = mesh;
    this.given = given;
    this.places = places;
  }

  /** That of a sound mesh, in n log n; it does not hang on the number of threads. */
  public static Arrangement of(Mesh unordered, Workers workers) {
    long[] keys = BoxOrder.keys(boxes(unordered, workers), workers);
    int[] given = new int[keys.length];
    long[] places = new long[keys.length];
    for (int i = 0; i < keys.length; i++) {
      given[i] = BoxOrder.number(keys[i], keys.length);
      places[i] = keys[i] - given[i];
    }
    Ties ties = new Ties(unordered);
    for (int from = 0, to = 1; from < given.length; from = to++) {
      while (to < given.length && places[to] == places[from]) {
        to++;
      }
      ties.sort(given, from, to);
    }
    int[] corners = new int[AXES * given.length];
    workers.split(given.length, AT_ONCE, (from, to) -> {
      for (int i = from; i < to; i++) {
        int first = ties.least(given[i]);
        for (int k = 0; k < AXES; k++) {
          corners[AXES * i + k] = unordered.corner(given[i], (first + k) % AXES);
        }
      }
    });
    int[] xyz = new int[AXES * unordered.vertexCount()];
    for (int v = 0; v < unordered.vertexCount(); v++) {
      xyz[AXES * v] = unordered.x(v);
      xyz[AXES * v + 1] = unordered.y(v);
      xyz[AXES * v + 2] = unordered.z(v);
    }
    return new Arrangement(Mesh.ofDistinct(xyz, corners), given, places);
  }

  /** Least x, y, z and greatest of each facet. */
  private static int[] boxes(Mesh mesh, Workers workers) {
    int[] boxes = new int[SIDES * mesh.facetCount()];
    workers.split(mesh.facetCount(), AT_ONCE, (from, to) -> {
      for (int f = from; f < to; f++) {
        int a = mesh.corner(f, 0);
        int b = mesh.corner(f, 1);
        int c = mesh.corner(f, 2);
        box(boxes, SIDES * f, mesh.x(a), mesh.x(b), mesh.x(c));
        box(boxes, SIDES * f + 1, mesh.y(a), mesh.y(b), mesh.y(c));
        box(boxes, SIDES * f + 2, mesh.z(a), mesh.z(b), mesh.z(c));
      }
    });
    return boxes;
  }

  private static void box(int[] boxes, int at, int a, int b, int c) {
    boxes[at] = Math.min(a, Math.min(b, c));
    boxes[at + AXES] = Math.max(a, Math.max(b, c));
  }

  /** The mesh in this order. */
  public Mesh mesh() {
    return mesh;
  }

  /** Places of the facets along the curve, rising, in the high bits; the lowest ones are 0. Not to be changed. */
  public long[] places() {
    return places;
  }

  /** The number a facet has in the mesh given. */
  public int given(int facet) {
    return given[facet];
  }

  /** Values of the facets in the order of the mesh given. */
  public double[] asGiven(double... values) {
    double[] ordered = new double[values.length];
    for (int f = 0; f < values.length; f++) {
      ordered[given[f]] = values[f];
    }
    return ordered;
  }

  /** Puts facets in order by their corners. */
  private static final class Ties {
    private final Mesh mesh;

    private Ties(Mesh mesh) {
      this.mesh = mesh;
    }

    /** Sorts a run of facets, which is short as a rule: the two halves of a rectangle lie about one place. */
    private void sort(int[] facets, int from, int to) {
      if (to - from > SHORT) {
        Integer[] run = Arrays.stream(facets, from, to).boxed().toArray(Integer[]::new);
        Arrays.sort(run, this::compare);
        for (int i = from; i < to; i++) {
          facets[i] = run[i - from];
        }
        return;
      }
      for (int i = from + 1; i < to; i++) {
        int facet = facets[i];
        int at = i;
        for (; at > from && compare(facets[at - 1], facet) > 0; at--) {
          facets[at] = facets[at - 1];
        }
        facets[at] = facet;
      }
    }

    private int compare(int a, int b) {
      int firstOfA = least(a);
      int firstOfB = least(b);
      int byCorner = 0;
      for (int k = 0; k < AXES && byCorner == 0; k++) {
        byCorner = compareCorners(mesh.corner(a, (firstOfA + k) % AXES), mesh.corner(b, (firstOfB + k) % AXES));
      }
      return byCorner;
    }

    /** Which of a facet's corners is the least. */
    private int least(int facet) {
      int least = compareCorners(mesh.corner(facet, 0), mesh.corner(facet, 1)) < 0 ? 0 : 1;
      return compareCorners(mesh.corner(facet, least), mesh.corner(facet, 2)) < 0 ? least : 2;
    }

    private int compareCorners(int a, int b) {
      int byX = Integer.compare(mesh.x(a), mesh.x(b));
      int byY = byX != 0 ? byX : Integer.compare(mesh.y(a), mesh.y(b));
      return byY != 0 ? byY : Integer.compare(mesh.z(a), mesh.z(b));
    }
  }
}
