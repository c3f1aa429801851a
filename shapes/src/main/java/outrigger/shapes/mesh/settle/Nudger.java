package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.num.Place;

/**
 * Puts corners of facets that meet improperly on grid points close by, one after the other, always the one that mends most.
 *
 * <p>Surfaces inclined by a few millionths are an example: where they cross, rounding makes their facets cross once more,
 * each time elsewhere, so that cutting them anew never ends. The facets meet as they should before rounding, and a few
 * corners a step away most often do so after it. Who joins whom stays as it is.
 *
 * <p>Of moves that mend as much the shortest is made, then that of the least corner: nothing depends on the facets' order.
 */
final class Nudger {
  /** Faults above which it is not tried: they are sooner cut anew, which leaves fewer. */
  private static final int MANY = 100;
  /** Pairs of facets above which a corner stays: looking at them for each place costs too long. Any such number would do. */
  private static final int PAIRS = 20_000;

  private final int[] given;
  private final int[] xyz;
  private final int[] corners;
  private final boolean[] moved;
  private final BoxTree tree;
  private final FacetsAt facets;
  private final Map<Integer, int[]> near = new HashMap<>();
  /** Pairs of facets that meet improperly; a facet without area is a pair with itself. */
  private final Set<Long> faults = new HashSet<>();
  /** The best move found: how many faults it mends, of which vertex, and how. */
  private int gain;
  private int vertex;
  private int[] move;

  private Nudger(Mesh mesh) {
    given = mesh.xyz();
    xyz = given.clone();
    corners = mesh.corners();
    moved = new boolean[mesh.vertexCount()];
    tree = BoxTree.ofFacets(xyz, corners);
    facets = new FacetsAt(moved.length, corners);
  }

  /** Looks at a mesh and moves what mends something, unless it has too many faults. */
  static Nudger of(Mesh mesh) {
    Nudger nudger = new Nudger(mesh);
    if (nudger.findFaults()) {
      while (!nudger.faults.isEmpty() && nudger.findMove()) {
        nudger.move();
      }
    }
    return nudger;
  }

  /** Whether no fault is left. */
  boolean isMended() {
    return faults.isEmpty();
  }

  /** The mesh's facets, in order, with the corners that were moved. */
  Rounded facets() {
    return new Rounded(xyz, corners, moved);
  }

  private boolean findFaults() {
    GridFacets.forEachFault(xyz, corners, tree, (f, g) -> {
      faults.add(pair(f, g));
      return faults.size() <= MANY;
    });
    return faults.size() <= MANY;
  }

  private static long pair(int f, int g) {
    return LongMap.edge(Math.min(f, g), Math.max(f, g));
  }

  /** Looks for the best move of all; false where none mends anything. */
  private boolean findMove() {
    Set<Integer> candidates = new TreeSet<>(Comparator.comparing(v -> Place.of(xyz, v)));
    for (long fault : faults) {
      for (int k = 0; k < 3; k++) {
        candidates.add(corners[3 * (int) (fault >> 32) + k]);
        candidates.add(corners[3 * (int) fault + k]);
      }
    }
    gain = 0;
    move = Moves.ALL.get(Moves.ALL.size() - 1);
    for (int v : candidates) {
      int x = xyz[3 * v];
      int y = xyz[3 * v + 1];
      int z = xyz[3 * v + 2];
      tryAll(v);
      Moves.put(xyz, v, x, y, z);
    }
    return gain > 0;
  }

  private void tryAll(int v) {
    long degree = facets.count(v);
    if (degree * degree > PAIRS || degree * near(v).length > PAIRS) {
      return;
    }
    int count = faultsAt(v);
    for (int[] m : Moves.ALL) {
      boolean shorter = Moves.size(m) < Moves.size(move);
      if (count < gain || count == gain && !shorter) {
        return;
      }
      Interrupt.check();
      put(v, m);
      int most = count - gain - (shorter && gain > 0 ? 0 : 1);
      int left = isTaken(v) ? Integer.MAX_VALUE : meetings(v, most, fault -> { });
      if (left <= most) {
        gain = count - left;
        vertex = v;
        move = m;
      }
    }
  }

  private int faultsAt(int v) {
    int count = 0;
    for (long fault : faults) {
      count += isAt(v, fault) ? 1 : 0;
    }
    return count;
  }

  private boolean isAt(int v, long fault) {
    return GridFacets.isCorner(corners, v, (int) (fault >> 32)) || GridFacets.isCorner(corners, v, (int) fault);
  }

  private void move() {
    faults.removeIf(fault -> isAt(vertex, fault));
    put(vertex, move);
    moved[vertex] = true;
    meetings(vertex, Integer.MAX_VALUE, faults::add);
  }

  /** Tells of the faults of facets at a vertex and counts them, as long as they are not too many. */
  private int meetings(int v, int most, LongConsumer told) {
    int count = 0;
    int[] around = near(v);
    for (int i = 0; i < facets.count(v); i++) {
      int f = facets.get(v, i);
      if (!GridFacets.hasArea(xyz, corners, f)) {
        count++;
        told.accept(pair(f, f));
      }
      for (int j = 0; j < around.length && count <= most; j++) {
        int g = around[j];
        if (g != f && !(g < f && GridFacets.isCorner(corners, v, g)) && GridFacets.areImproper(xyz, corners, f, g)) {
          count++;
          told.accept(pair(f, g));
        }
      }
    }
    return count;
  }

  /** Whether another vertex lies where this one was put. */
  private boolean isTaken(int v) {
    for (int f : near(v)) {
      for (int c = 3 * f; c < 3 * f + 3; c++) {
        int w = corners[c];
        if (w != v && Arrays.equals(xyz, 3 * v, 3 * v + 3, xyz, 3 * w, 3 * w + 3)) {
          return true;
        }
      }
    }
    return false;
  }

  private void put(int v, int[] m) {
    Moves.put(xyz, v, given[3 * v] + m[0], given[3 * v + 1] + m[1], given[3 * v + 2] + m[2]);
  }

  /** Facets that those at a vertex may meet wherever their corners are put. */
  private int[] near(int v) {
    return near.computeIfAbsent(v, this::findNear);
  }

  private int[] findNear(int v) {
    Set<Integer> found = new TreeSet<>();
    facets.forEach(v, f -> Moves.forEachNear(tree, given, corners, f, found::add));
    return found.stream().mapToInt(i -> i).toArray();
  }

}
