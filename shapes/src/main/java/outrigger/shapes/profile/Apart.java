package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.exact.Sign;

/**
 * The common easy cases: regions that keep apart are joined by listing them, and cut out as the holes they are. Exact,
 * and the same to the last corner as the general way of {@link Overlays}, which takes longer to load than a plate with its
 * holes takes to make.
 */
final class Apart {
  /** Most pairs of an edge and a box that are looked at; the general way, which sorts them, is quicker from there on. */
  private static final long MOST_PAIRS = 100_000;

  /** Most corners of two rings between which a parting line is looked for: hexagons side by side have twelve. */
  private static final int MOST_CORNERS = 24;

  private Apart() {}

  /** All parts together, if their regions keep apart. */
  static Optional<List<Region>> union(List<List<Region>> parts) {
    List<Region> all = new ArrayList<>();
    for (List<Region> part : parts) {
      all.addAll(part);
    }
    if (!keepApart(all)) {
      return Optional.empty();
    }
    all.sort(null);
    return Optional.of(List.copyOf(all));
  }

  /**
   * The first regions without the others: if these keep apart and each lies clear of every edge of the first, or each of the
   * first lies clear of every edge of these.
   */
  static Optional<List<Region>> difference(List<Region> from, List<Region> cutters) {
    if (isClear(cutters, boxes(from))) {
      return Optional.of(from.stream().filter(region -> !holdsOne(cutters, region.shell().x(0), region.shell().y(0))).toList());
    }
    boolean plain = isClear(from, boxes(cutters)) && cutters.stream().allMatch(cutter -> cutter.holes().isEmpty());
    return plain && keepApart(cutters) ? Optional.of(pierced(from, cutters)) : Optional.empty();
  }

  private static List<Region> pierced(List<Region> from, List<Region> cutters) {
    List<Region> left = new ArrayList<>();
    for (Region region : from) {
      List<Ring> holes = new ArrayList<>(region.holes());
      for (Region cutter : cutters) {
        if (holds(region, cutter.shell().x(0), cutter.shell().y(0))) {
          holes.add(cutter.shell().turned());
        }
      }
      left.add(new Region(region.shell(), holes));
    }
    return List.copyOf(left);
  }

  private static List<Box> boxes(List<Region> regions) {
    List<Box> boxes = new ArrayList<>();
    for (Region region : regions) {
      boxes.add(Box.of(region.shell()));
    }
    return boxes;
  }

  private static boolean keepApart(List<Region> regions) {
    if ((long) regions.size() * regions.size() > MOST_PAIRS) {
      return false;
    }
    List<Box> boxes = boxes(regions);
    for (int i = 0; i < boxes.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (boxes.get(i).meets(boxes.get(k)) && !isParted(regions.get(i).shell(), regions.get(k).shell())) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether one of the edges lies on a line that has one ring strictly on one side and the other not on it. */
  private static boolean isParted(Ring a, Ring b) {
    if (a.size() + b.size() > MOST_CORNERS) {
      return false;
    }
    return hasParting(a, b) || hasParting(b, a);
  }

  private static boolean hasParting(Ring ring, Ring other) {
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i, i++) {
      if (isOnSide(ring, j, i, other, -1) && isOnSide(ring, j, i, ring, 1)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a ring lies wholly on a side of an edge's line, 1 left or -1 right; on the line itself if the edge is its own.
   */
  private static boolean isOnSide(Ring edges, int from, int to, Ring ring, int side) {
    for (int i = 0; i < ring.size(); i++) {
      int turn = Sign.turn(edges.x(from), edges.y(from), edges.x(to), edges.y(to), ring.x(i), ring.y(i)) * side;
      if (turn < 0 || turn == 0 && ring != edges) {
        return false;
      }
    }
    return true;
  }

  /** Whether no edge of a region comes near a box. */
  static boolean isClear(List<Region> regions, List<Box> boxes) {
    long pairs = 0;
    for (Region region : regions) {
      List<Ring> rings = new ArrayList<>(region.holes());
      rings.add(region.shell());
      for (Ring ring : rings) {
        pairs += (long) ring.size() * boxes.size();
        if (pairs > MOST_PAIRS || !isClear(ring, boxes)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isClear(Ring ring, List<Box> boxes) {
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i, i++) {
      int minX = Math.min(ring.x(i), ring.x(j));
      int minY = Math.min(ring.y(i), ring.y(j));
      int maxX = Math.max(ring.x(i), ring.x(j));
      int maxY = Math.max(ring.y(i), ring.y(j));
      for (Box box : boxes) {
        if (box.meets(minX, minY, maxX, maxY)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether a point off every edge lies within one of the regions. */
  static boolean holdsOne(List<Region> regions, int x, int y) {
    for (Region region : regions) {
      if (holds(region, x, y)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a point off every edge lies within. */
  private static boolean holds(Region region, int x, int y) {
    boolean within = holds(region.shell(), x, y);
    for (Ring hole : region.holes()) {
      within &= !holds(hole, x, y);
    }
    return within;
  }

  /** Counts the edges that a ray to the right crosses. */
  private static boolean holds(Ring ring, int x, int y) {
    boolean within = false;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i, i++) {
      boolean up = ring.y(i) > y;
      if (up != ring.y(j) > y) {
        within ^= up == Sign.turn(ring.x(j), ring.y(j), ring.x(i), ring.y(i), x, y) > 0;
      }
    }
    return within;
  }
}
