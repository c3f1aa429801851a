package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Place;

/**
 * Takes away thin ones of the facets that meet improperly: a needle's short edge shrinks to nothing, a cap's long edge is
 * turned to run to its apex.
 *
 * <p>Where two tilted surfaces all but coincide, they cross in facets lower than a grid step, and rounding folds these over
 * their neighbours. To cut such facets anew makes more of them; without them the surface lies as it did, to within
 * {@value #OUT} step.
 *
 * <p>Thinnest facets first, then by their places: nothing depends on the facets' order. All sums are whole numbers that
 * doubles hold, up to the last root or quotient.
 */
final class ThinFacets {
  /** How far a facet's plane may be left by what is put in its stead, grid steps: as far as rounding puts a corner twice. */
  private static final double OUT = 1;
  /** Facets lower than this are thin at first, grid steps: rounding folds few others. */
  private static final double LOW = 1;
  /** How far that is doubled where no more can be taken; with 16 and 32 as much was mended. */
  private static final double MOST = 8;
  /** Shortest edge of a needle, as a multiple of that height: any such number would do. */
  private static final double NEEDLE = 2;
  /** The same of a cap that cannot be turned. */
  private static final double CAP = 4;
  /** Rounds before giving up: those seen needed some twenty at most. */
  private static final int ROUNDS = 40;

  private final int[] xyz;
  private final Stars stars;
  private double height = LOW;
  private boolean mended;

  private ThinFacets(Mesh mesh, boolean[] moved) {
    xyz = mesh.xyz();
    stars = new Stars(mesh, moved);
  }

  /**
   * Looks at a mesh and takes away thin facets until none meets another improperly, or none is left to take.
   *
   * @param moved of each facet whether it has a rounded corner
   */
  static ThinFacets of(Mesh mesh, boolean[] moved) {
    ThinFacets thin = new ThinFacets(mesh, moved);
    for (int round = 0; round < ROUNDS && !thin.mended && thin.height <= MOST; round++) {
      thin.look();
    }
    return thin;
  }

  /** Whether no facet meets another improperly. */
  boolean isMended() {
    return mended;
  }

  /** The facets left; corners of those that changed, or had a rounded corner before, count as moved. */
  Rounded facets() {
    return stars.facets();
  }

  private void look() {
    Set<Integer> faulty = faulty();
    mended = faulty.isEmpty();
    boolean changes = false;
    Comparator<Integer> lowest = Comparator.comparingDouble(this::height);
    for (int f : faulty.stream().filter(this::isThin).sorted(lowest.thenComparing(this::places, Arrays::compare)).toList()) {
      changes |= !stars.isGone(f) && isThin(f) && takeAway(f);
    }
    height *= changes ? 1 : 2;
  }

  /** Facets without area, and of the others those that meet one but in a common corner or edge. */
  private Set<Integer> faulty() {
    int[] corners = stars.facets().corners();
    int[] numbers = IntStream.range(0, stars.count()).filter(f -> !stars.isGone(f)).toArray();
    Set<Integer> faulty = new TreeSet<>();
    GridFacets.forEachFault(xyz, corners, BoxTree.ofFacets(xyz, corners), (i, j) -> {
      faulty.add(numbers[i]);
      faulty.add(numbers[j]);
      return true;
    });
    return faulty;
  }

  private Place[] places(int f) {
    Place[] places = {Place.of(xyz, stars.corner(f, 0)), Place.of(xyz, stars.corner(f, 1)),
        Place.of(xyz, stars.corner(f, 2))};
    Arrays.sort(places);
    return places;
  }

  private boolean isThin(int f) {
    return height(f) < height;
  }

  private boolean takeAway(int f) {
    Comparator<Integer> shorter = Comparator.comparingDouble(k -> edge(f, k));
    List<Integer> edges = Stream.of(0, 1, 2).sorted(shorter.thenComparing(k -> places(f, k), Arrays::compare)).toList();
    int shortest = edges.get(0);
    int longest = edges.get(2);
    double length = edge(f, shortest);
    return length <= NEEDLE * height ? contract(f, shortest) || turn(f, longest)
        : turn(f, longest) || length <= CAP * height && contract(f, shortest);
  }

  private double edge(int f, int k) {
    return length(stars.corner(f, k), stars.corner(f, k + 1));
  }

  private Place[] places(int f, int k) {
    Place[] ends = {Place.of(xyz, stars.corner(f, k)), Place.of(xyz, stars.corner(f, k + 1))};
    Arrays.sort(ends);
    return ends;
  }

  /** Shrinks an edge to that of its ends at which the surface moves less, if one will do. */
  private boolean contract(int f, int k) {
    int a = stars.corner(f, k);
    int b = stars.corner(f, k + 1);
    int other = stars.across(f, k);
    if (other < 0 || !stars.mayContract(f, other, a, b)) {
      return false;
    }
    double toB = farthest(a, b);
    double toA = farthest(b, a);
    if (Math.min(toA, toB) > OUT) {
      return false;
    }
    boolean isToB = toB < toA || toB == toA && Place.of(xyz, a).compareTo(Place.of(xyz, b)) < 0;
    stars.contract(f, other, isToB ? a : b, isToB ? b : a);
    return true;
  }

  /** How far a vertex put on another gets from the planes of its facets that are not thin; infinite if one folds. */
  private double farthest(int from, int to) {
    double most = 0;
    for (int f : stars.star(from)) {
      int[] c = {stars.corner(f, 0), stars.corner(f, 1), stars.corner(f, 2)};
      if (c[0] != to && c[1] != to && c[2] != to && !isThin(f)) {
        double[] before = normal(c[0], c[1], c[2]);
        for (int k = 0; k < 3; k++) {
          c[k] = c[k] == from ? to : c[k];
        }
        if (dot(before, normal(c[0], c[1], c[2])) <= 0) {
          return Double.POSITIVE_INFINITY;
        }
        most = Math.max(most, distance(to, from, before));
      }
    }
    return most;
  }

  /** Turns an edge, if both facets come to be less thin than the thinner was and none folds. */
  private boolean turn(int f, int k) {
    int a = stars.corner(f, k);
    int b = stars.corner(f, k + 1);
    int other = stars.across(f, k);
    if (other < 0 || !stars.mayTurn(f, other, a, b)) {
      return false;
    }
    int from = stars.apex(f, a, b);
    int to = stars.apex(other, a, b);
    boolean better = Math.min(height(a, to, from), height(to, b, from)) > Math.min(height(f), height(other));
    double[] before = normal(b, a, to);
    boolean keeps = isThin(other) || dot(before, normal(a, to, from)) > 0 && dot(before, normal(to, b, from)) > 0
        && distance(from, a, before) <= OUT;
    if (better && keeps) {
      stars.turn(f, other, a, b);
    }
    return better && keeps;
  }

  private double height(int f) {
    return height(stars.corner(f, 0), stars.corner(f, 1), stars.corner(f, 2));
  }

  /** How high a triangle stands on its longest edge, grid steps. */
  private double height(int a, int b, int c) {
    double[] n = normal(a, b, c);
    return Math.sqrt(dot(n, n)) / Math.max(length(a, b), Math.max(length(b, c), length(c, a)));
  }

  private double length(int a, int b) {
    double[] v = vector(a, b);
    return Math.sqrt(dot(v, v));
  }

  private double[] vector(int a, int b) {
    return new double[] {xyz[3 * b] - xyz[3 * a], xyz[3 * b + 1] - xyz[3 * a + 1], xyz[3 * b + 2] - xyz[3 * a + 2]};
  }

  private double[] normal(int a, int b, int c) {
    double[] u = vector(a, b);
    double[] v = vector(a, c);
    return new double[] {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
  }

  /** How far a vertex lies from a plane through another. */
  private double distance(int vertex, int inPlane, double[] normal) {
    return Math.abs(dot(vector(inPlane, vertex), normal)) / Math.sqrt(dot(normal, normal));
  }

  private static double dot(double[] u, double[] v) {
    return u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
  }
}
