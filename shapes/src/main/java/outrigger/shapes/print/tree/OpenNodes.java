package outrigger.shapes.print.tree;

import java.util.Arrays;

/**
 * Finds nodes of a tree with nothing near that could hold a ball: all facets within a width of them face one way.
 *
 * <p>What holds a ball hardly pulls it: some of the spokes have a mean, by weights, of little length. A spoke is a facet's
 * normal, or on an edge or a corner a sum of normals, each times a number not below 0, which add up to 1 or more. So where
 * one direction's product with all normals is more than that length no ball is held, however many facets it rests on: as
 * between the flanks of a thread. The direction is sought as the shortest vector of the normals' hull (M. Frank, P. Wolfe,
 * An algorithm for quadratic programming, 1956), while facets are gathered: two that stand opposite end the search at once.
 */
final class OpenNodes {
  /** Facets below a node that is asked for, about. */
  private static final int GROUP = 64;
  /** More facets are not looked at. */
  private static final int MOST = 4096;
  /** Steps towards the shortest vector after the facets are gathered: own choice, more find few places more. */
  private static final int STEPS = 8;
  private static final int AXES = 3;
  private static final byte OPEN = 1;
  private static final byte SHUT = 2;

  private final FacetTree tree;
  private final PlaceTree places;
  private final double width;
  private final double held;
  /** The first node of the level that is asked for. */
  private final int first;
  /** Of each node of that level what is known. Two threads may work out the same one. */
  private final byte[] known;

  /**
   * Of a tree.
   *
   * @param width of the balls, mm
   * @param held what holds a ball pulls it by less than this
   */
  OpenNodes(FacetTree tree, double width, double held) {
    this.tree = tree;
    this.width = width;
    this.held = held;
    places = tree.places();
    int level = tree.leaves();
    while (level > 1 && (long) tree.size() * 2 <= (long) GROUP * level) {
      level /= 2;
    }
    first = level;
    known = new byte[2 * level];
  }

  /** Whether a node is of the level that is asked for. */
  boolean asks(int node) {
    return node >= first && node < 2 * first;
  }

  /** Whether a node lies below that level. */
  boolean isPast(int node) {
    return node >= 2 * first;
  }

  /** Whether no ball is held that touches a facet below a node of that level. */
  boolean isOpen(int node) {
    if (known[node] == 0) {
      known[node] = new Search().facesOneWay(node) ? OPEN : SHUT;
    }
    return known[node] == OPEN;
  }

  /** The search about one node. */
  private final class Search {
    private final double[] box = new double[2 * AXES];
    private int[] slots = new int[GROUP];
    private int count;
    /** The shortest vector found so far of the normals' hull. */
    private double x;
    private double y;
    private double z;

    boolean facesOneWay(int node) {
      for (int k = 0; k < AXES; k++) {
        box[k] = tree.low(node, k) - width;
        box[AXES + k] = tree.high(node, k) + width;
      }
      if (!gather(1)) {
        return false;
      }
      for (int step = 0; step < STEPS; step++) {
        boolean all = true;
        for (int i = 0; i < count; i++) {
          if (!agrees(slots[i])) {
            turnTo(slots[i]);
            all = false;
          }
        }
        if (all || isShort()) {
          return all;
        }
      }
      return false;
    }

    /** Takes the facets below a node that reach into the box; false as soon as no direction is left. */
    private boolean gather(int node) {
      if (!places.meets(node, box)) {
        return true;
      }
      if (node < places.leaves()) {
        return gather(2 * node) && gather(2 * node + 1);
      }
      int end = places.end(node);
      for (int slot = places.first(node); slot < end; slot++) {
        if (reachesIn(slot) && !take(slot)) {
          return false;
        }
      }
      return true;
    }

    private boolean reachesIn(int slot) {
      for (int k = 0; k < AXES; k++) {
        if (tree.least(slot, k) > box[AXES + k] || tree.most(slot, k) < box[k]) {
          return false;
        }
      }
      return true;
    }

    private boolean take(int slot) {
      if (count == slots.length) {
        slots = Arrays.copyOf(slots, 2 * count);
      }
      slots[count] = slot;
      if (count++ == 0) {
        x = tree.normalX(slot);
        y = tree.normalY(slot);
        z = tree.normalZ(slot);
      } else if (!agrees(slot)) {
        turnTo(slot);
      }
      return count < MOST && !isShort();
    }

    private boolean agrees(int slot) {
      return tree.alongNormal(slot, x, y, z) > held * Math.sqrt(x * x + y * y + z * z);
    }

    private boolean isShort() {
      return x * x + y * y + z * z < held * held;
    }

    /** To the shortest vector between the last one and a facet's normal. */
    private void turnTo(int slot) {
      double dx = tree.normalX(slot) - x;
      double dy = tree.normalY(slot) - y;
      double dz = tree.normalZ(slot) - z;
      double t = Math.min(1, -(x * dx + y * dy + z * dz) / (dx * dx + dy * dy + dz * dz));
      x += t * dx;
      y += t * dy;
      z += t * dz;
    }
  }
}
