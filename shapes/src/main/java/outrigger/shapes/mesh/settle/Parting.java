package outrigger.shapes.mesh.settle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongPredicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.FacetContact;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.num.Place;

/**
 * Parts a surface from itself where rounding to the grid has made it touch.
 *
 * <p>Two sides of a gap or a wall thinner than the grid can fall together in a vertex or along an edge. Each fan of facets
 * there gets a vertex of its own, and all but one are put on a grid point close by, the nearest at which their facets keep
 * their area and meet no others. Where that cannot be done the touch stays, for the proof to refuse.
 */
final class Parting {
  /** All moves that lead elsewhere, short ones first. */
  private static final List<int[]> MOVES = Moves.ALL.subList(1, Moves.ALL.size());

  private final int[] xyz;
  private final int[] corners;
  private final BoxTree tree;
  private final Map<Integer, List<Integer>> facetsAt = new HashMap<>();
  private final Set<Place> places = new HashSet<>();
  private final Set<Integer> moved = new HashSet<>();

  private Parting(int[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    tree = BoxTree.ofFacets(xyz, corners);
    for (int v : corners) {
      places.add(Place.of(xyz, v));
    }
  }

  /**
   * The mesh with its touches parted, or nothing where there is none or none can be.
   *
   * @param mesh closed, on the grid, its facets meeting in common corners and edges only, but for the touches
   * @param touching vertices that touch facets they are no corner of
   */
  static Optional<Rounded> part(Mesh mesh, Set<Integer> touching) {
    Fans fans = Fans.of(mesh.xyz(), mesh.corners());
    if (fans.areSingle()) {
      return touching.isEmpty() ? Optional.empty() : part(mesh, fans, touching);
    }
    Mesh split = EdgeSplit.of(mesh, fans.inseparable());
    return split == mesh ? part(mesh, fans, touching) : part(split, Fans.of(split.xyz(), split.corners()), Set.of());
  }

  private static Optional<Rounded> part(Mesh mesh, Fans fans, Set<Integer> touching) {
    int[] corners = mesh.corners();
    int[] given = mesh.xyz();
    int[] xyz = Arrays.copyOf(given, given.length + 3 * corners.length);
    int[] copyOf = new int[corners.length];
    Arrays.fill(copyOf, -1);
    boolean[] used = new boolean[mesh.vertexCount()];
    Map<Integer, List<Integer>> copies = new HashMap<>();
    int vertices = mesh.vertexCount();
    for (int c = 0; c < corners.length; c++) {
      int fan = fans.fan(c);
      int v = corners[c];
      if (copyOf[fan] < 0 && !used[v]) {
        used[v] = true;
        copyOf[fan] = v;
      } else if (copyOf[fan] < 0) {
        System.arraycopy(given, 3 * v, xyz, 3 * vertices, 3);
        copyOf[fan] = vertices++;
        copies.computeIfAbsent(v, w -> new ArrayList<>(List.of(w))).add(copyOf[fan]);
      }
      corners[c] = copyOf[fan];
    }
    return new Parting(Arrays.copyOf(xyz, 3 * vertices), corners).apart(copies, touching);
  }

  private Optional<Rounded> apart(Map<Integer, List<Integer>> copies, Set<Integer> touching) {
    touching.forEach(v -> copies.computeIfAbsent(v, w -> new ArrayList<>(List.of(w))));
    copies.values().forEach(all -> all.forEach(v -> facetsAt.put(v, new ArrayList<>())));
    for (int c = 0; c < corners.length; c++) {
      if (facetsAt.containsKey(corners[c])) {
        facetsAt.get(corners[c]).add(c / 3);
      }
    }
    Map<Place, List<Integer>> sorted = new TreeMap<>();
    copies.forEach((v, all) -> sorted.put(Place.of(xyz, v), all));
    sorted.values().forEach(all -> partVertices(all, all.size() - (touching.contains(all.get(0)) ? 0 : 1)));
    boolean[] flags = new boolean[xyz.length / 3];
    moved.forEach(v -> flags[v] = true);
    return moved.isEmpty() ? Optional.empty() : Optional.of(new Rounded(xyz, corners, flags));
  }

  /** Moves so many of the vertices at a place, small fans first. */
  private void partVertices(List<Integer> copies, int most) {
    copies.sort(Comparator.<Integer>comparingInt(v -> facetsAt.get(v).size()).thenComparing(this::ends, Arrays::compare));
    int left = most;
    for (int v : copies) {
      Interrupt.check();
      if (left > 0 && move(v, left > 1 || most < copies.size())) {
        moved.add(v);
        left--;
      }
    }
  }

  /** The places of all corners of a fan's facets, in order: they tell it from others whatever the numbers are. */
  private Place[] ends(int vertex) {
    return facetsAt.get(vertex).stream().flatMap(f -> Arrays.stream(corners, 3 * f, 3 * f + 3)
        .mapToObj(v -> Place.of(xyz, v))).sorted().toArray(Place[]::new);
  }

  /**
   * Puts a vertex elsewhere, if some place is better.
   *
   * @param parts whether it is to leave others at its place; if not, it moves only if its facets meet some there
   */
  private boolean move(int v, boolean parts) {
    int x = xyz[3 * v];
    int y = xyz[3 * v + 1];
    int z = xyz[3 * v + 2];
    int[] near = near(v);
    Set<Long> before = new HashSet<>();
    meetings(v, near, before::add);
    if (!parts && before.isEmpty()) {
      return false;
    }
    for (int[] move : MOVES) {
      Moves.put(xyz, v, x + move[0], y + move[1], z + move[2]);
      if (!places.contains(Place.of(xyz, v)) && isBetter(v, near, before)) {
        places.add(Place.of(xyz, v));
        return true;
      }
    }
    Moves.put(xyz, v, x, y, z);
    return false;
  }

  /** Whether the facets at a vertex keep their area and meet no others but some of those that they met before. */
  private boolean isBetter(int v, int[] near, Set<Long> before) {
    int[] left = {0};
    return meetings(v, near, pair -> {
      left[0]++;
      return before.contains(pair) && pair >> 32 != (int) pair;
    }) && left[0] <= Math.max(0, before.size() - 1);
  }

  /** Facets that those at a vertex may meet wherever it and they are put. */
  private int[] near(int v) {
    Set<Integer> found = new HashSet<>();
    for (int f : facetsAt.get(v)) {
      Moves.forEachNear(tree, xyz, corners, f, found::add);
    }
    return found.stream().mapToInt(i -> i).toArray();
  }

  private boolean isImproper(int f, int g) {
    return FacetContact.improper(xyz, corners, f, g);
  }

  /**
   * Tells of pairs of facets that meet, one of them at a vertex, while it is asked to go on; false if it was not. A facet
   * without area meets itself.
   */
  private boolean meetings(int v, int[] near, LongPredicate told) {
    for (int f : facetsAt.get(v)) {
      if (!GridFacets.hasArea(xyz, corners, f) && !told.test(LongMap.edge(f, f))) {
        return false;
      }
      for (int g : near) {
        // a pair of which both are at the vertex is told of once
        if (g != f && !(g < f && GridFacets.isCorner(corners, v, g)) && isImproper(f, g)
            && !told.test(LongMap.edge(Math.min(f, g), Math.max(f, g)))) {
          return false;
        }
      }
    }
    return true;
  }
}
