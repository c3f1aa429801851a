package outrigger.shapes.mesh.settle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import outrigger.shapes.exact.BoxTree;

/** The grid points near a corner that it may be put on. */
final class Moves {
  /** How far a corner is put away along each axis, grid steps: own choice. */
  private static final int REACH = 2;
  /** The moves of a corner within that reach, short ones first; the first of them leaves it where it is. */
  static final List<int[]> ALL = all();

  private Moves() {}

  private static List<int[]> all() {
    List<int[]> all = new ArrayList<>();
    for (int x = -REACH; x <= REACH; x++) {
      for (int y = -REACH; y <= REACH; y++) {
        for (int z = -REACH; z <= REACH; z++) {
          all.add(new int[] {x, y, z});
        }
      }
    }
    all.sort(Comparator.comparingInt(Moves::size));
    return all;
  }

  /** Square of how far a move goes, grid steps. */
  static int size(int[] move) {
    return move[0] * move[0] + move[1] * move[1] + move[2] * move[2];
  }

  /** Puts a vertex on a grid point. */
  static void put(int[] xyz, int vertex, int x, int y, int z) {
    xyz[3 * vertex] = x;
    xyz[3 * vertex + 1] = y;
    xyz[3 * vertex + 2] = z;
  }

  /**
   * Gives each facet that one may meet wherever corners of both are put, itself included.
   *
   * @param xyz where corners are before they are put anywhere else
   */
  static void forEachNear(BoxTree tree, int[] xyz, int[] corners, int facet, IntConsumer consumer) {
    tree.forEachOverlap(GridFacets.box(xyz, corners, facet, 2 * REACH), 0, consumer);
  }
}
