package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Loops;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.profile.Region;
import outrigger.shapes.profile.Ring;

/**
 * Rings moved into the matter, each corner along its mitre, so that every edge moves by the same distance.
 *
 * <p>Corners keep their numbers, so that rings of several insets can be joined by walls.
 */
final class Inset {
  /**
   * Grid steps within which two corners are one: each is rounded by half a step, from sides rounded themselves. Own choice.
   */
  private static final int NEAR = 3;
  /**
   * Grid steps within which the ends of an edge that turned round are one: the flats of a rounded corner lie within the
   * chord error of its circle, so an inset of the full radius overshoots them by as much. Three times that
   * is own choice.
   */
  private static final int OVERSHOT = (int) (3 * Profile.CHORD_ERROR * Grid.PER_MM);

  private Inset() {}

  /**
   * The corners of regions moved in: of each region its rings, shell first, of each ring x and y in turn.
   *
   * @param mm how far to move; negative moves out of the matter
   * @throws ShapeException if an edge would turn round, rings would meet or pass each other, or a corner would leave
   *     the grid
   */
  static int[][][] of(List<Region> regions, double mm) {
    List<Ring> rings = new ArrayList<>();
    for (Region region : regions) {
      rings.add(region.shell());
      rings.addAll(region.holes());
    }
    int[][] moved = moved(rings, mm);
    int[][][] grouped = new int[regions.size()][][];
    int from = 0;
    for (int r = 0; r < grouped.length; r++) {
      int to = from + 1 + regions.get(r).holes().size();
      grouped[r] = Arrays.copyOfRange(moved, from, to);
      from = to;
    }
    if (mm != 0) {
      checkNested(grouped, mm);
    }
    return grouped;
  }

  private static int[][] moved(List<Ring> rings, double mm) {
    if (mm == 0) {
      return rings.stream().map(ring -> moved(ring, 0)).toArray(int[][]::new);
    }
    int[][] moved = new int[rings.size()][];
    for (int r = 0; r < moved.length; r++) {
      moved[r] = moved(rings.get(r), mm * Grid.PER_MM);
      weldNear(rings.get(r), moved[r]);
    }
    check(rings, moved, mm);
    return moved;
  }

  private static int[] moved(Ring ring, double units) {
    int n = ring.size();
    int[] xy = new int[2 * n];
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      int after = (i + 1) % n;
      double ux = ring.x(i) - (double) ring.x(before);
      double uy = ring.y(i) - (double) ring.y(before);
      double vx = ring.x(after) - (double) ring.x(i);
      double vy = ring.y(after) - (double) ring.y(i);
      double u = Math.sqrt(ux * ux + uy * uy);
      double v = Math.sqrt(vx * vx + vy * vy);
      // normals to the left of both edges; their sum over 1 + cosine reaches the mitre
      double share = units / (1 + (ux * vx + uy * vy) / (u * v));
      xy[2 * i] = PolyhedronBuilder.onGrid((long) Math.floor(ring.x(i) - (uy / u + vy / v) * share + 0.5));
      xy[2 * i + 1] = PolyhedronBuilder.onGrid((long) Math.floor(ring.y(i) + (ux / u + vx / v) * share + 0.5));
    }
    return xy;
  }

  /** Brings corners that rounding alone keeps apart, as where a chamfer meets its corner radius, to one place. */
  private static void weldNear(Ring ring, int[] xy) {
    int n = xy.length / 2;
    int first = 0;
    while (first < n && isOne(ring, xy, (first + n - 1) % n, first)) {
      first++;
    }
    for (int k = 0; k < n - 1 && first < n; k++) {
      int i = (first + k) % n;
      int j = (i + 1) % n;
      if (isOne(ring, xy, i, j)) {
        xy[2 * j] = xy[2 * i];
        xy[2 * j + 1] = xy[2 * i + 1];
      }
    }
  }

  private static boolean isOne(Ring ring, int[] xy, int i, int j) {
    int reach = along(ring, xy, i, j) < 0 ? OVERSHOT : NEAR;
    return Math.abs(xy[2 * i] - xy[2 * j]) <= reach && Math.abs(xy[2 * i + 1] - xy[2 * j + 1]) <= reach;
  }

  /** Positive where a moved edge still runs its old way, negative where it turned round. */
  private static long along(Ring ring, int[] xy, int i, int j) {
    return (xy[2 * j] - (long) xy[2 * i]) * (ring.x(j) - ring.x(i))
        + (xy[2 * j + 1] - (long) xy[2 * i + 1]) * (ring.y(j) - ring.y(i));
  }

  /** No edge may have turned round, and no two may meet. */
  private static void check(List<Ring> rings, int[][] moved, double mm) {
    for (int r = 0; r < moved.length; r++) {
      Ring ring = rings.get(r);
      int[] xy = moved[r];
      int n = ring.size();
      for (int i = 0; i < n; i++) {
        int j = (i + 1) % n;
        boolean point = xy[2 * i] == xy[2 * j] && xy[2 * i + 1] == xy[2 * j + 1];
        if (!point && along(ring, xy, i, j) <= 0) {
          throw tooDeep(ring.x(i), ring.y(i), mm);
        }
      }
    }
    checkApart(moved, mm);
  }

  /** Rings may pass each other without an edge crossing in the end, as where a hole's rim is wider than its wall. */
  private static void checkNested(int[][][] regions, double mm) {
    List<List<int[]>> loops = Arrays.stream(regions).map(List::of).toList();
    String fault = Loops.fault(loops);
    if (!fault.isEmpty()) {
      throw new ShapeException(String.format(Locale.ROOT,
          "a rim or draft that moves the outline by %.3f mm does not fit the profile: ", Math.abs(mm)) + fault,
          "Use a smaller chamfer, fillet or draft, or wider walls and gaps.");
    }
  }

  /** No two edges may meet but neighbours in their common corner. */
  private static void checkApart(int[][] moved, double mm) {
    int count = 0;
    for (int[] xy : moved) {
      count += xy.length / 2;
    }
    int[] ends = new int[4 * count];
    int[] boxes = new int[6 * count];
    int e = 0;
    for (int[] xy : moved) {
      for (int i = 0; i < xy.length; i += 2) {
        int j = (i + 2) % xy.length;
        System.arraycopy(xy, i, ends, 4 * e, 2);
        System.arraycopy(xy, j, ends, 4 * e + 2, 2);
        for (int k = 0; k < 2; k++) {
          boxes[6 * e + k] = Math.min(xy[i + k], xy[j + k]);
          boxes[6 * e + 3 + k] = Math.max(xy[i + k], xy[j + k]);
        }
        e++;
      }
    }
    BoxTree.of(boxes).selfPairs((f, g) -> {
      if (meet(ends, 4 * f, 4 * g)) {
        throw tooDeep(ends[4 * f], ends[4 * f + 1], mm);
      }
      return true;
    });
  }

  /** Whether two edges, given by where their ends are, have a point in common but for a corner of both. */
  private static boolean meet(int[] p, int f, int g) {
    if (same(p, f, f + 2) || same(p, g, g + 2) || same(p, f, g + 2) || same(p, f + 2, g) || same(p, f, g)
        || same(p, f + 2, g + 2)) {
      return false;
    }
    return turn(p, f, f + 2, g) * turn(p, f, f + 2, g + 2) <= 0 && turn(p, g, g + 2, f) * turn(p, g, g + 2, f + 2) <= 0;
  }

  private static boolean same(int[] p, int a, int b) {
    return p[a] == p[b] && p[a + 1] == p[b + 1];
  }

  private static int turn(int[] p, int a, int b, int c) {
    return Sign.turn(p[a], p[a + 1], p[b], p[b + 1], p[c], p[c + 1]);
  }

  private static ShapeException tooDeep(int x, int y, double mm) {
    return new ShapeException(String.format(Locale.ROOT,
        "a rim or draft that moves the outline by %.3f mm does not fit the profile near x %.3f, y %.3f mm: an edge or "
            + "corner radius there is smaller than that, or two outlines would meet", Math.abs(mm), Grid.toMm(x),
        Grid.toMm(y)), "Use a smaller chamfer, fillet or draft, or a larger corner radius.");
  }
}
