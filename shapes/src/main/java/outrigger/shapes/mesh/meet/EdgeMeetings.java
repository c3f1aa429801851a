package outrigger.shapes.mesh.meet;

import java.util.Arrays;
import outrigger.shapes.num.LongMap;

/**
 * Numbers pairs of a half-edge and something that it meets, from 0.
 *
 * <p>The pairs of a half-edge hang in a chain, so that those asked for one after the other lie together in memory; of an
 * edge that meets many, all but the first few are kept in a hash table.
 */
final class EdgeMeetings {
  /** The longest chain: more are found faster by their hash. Own choice, not sharp. */
  private static final int LONGEST = 8;

  /** Of each half-edge the number of its newest pair, and one; 0 where it has none. */
  private final int[] newest;
  /** Of each pair the number of the same half-edge's pair before it, and one; 0 for the first. */
  private int[] older = new int[64];
  /** Of each pair what the half-edge meets. */
  private int[] met = new int[64];
  /** The pairs that are in no chain. */
  private final LongMap others = new LongMap(0);
  private int size;

  EdgeMeetings(int halfEdges) {
    newest = new int[halfEdges];
  }

  /** The number of a pair, or -1. */
  int number(int halfEdge, int with) {
    int length = 0;
    for (int n = newest[halfEdge] - 1; n >= 0; n = older[n] - 1) {
      if (met[n] == with) {
        return n;
      }
      length++;
    }
    return length < LONGEST ? -1 : others.get(LongMap.edge(halfEdge, with));
  }

  /** Adds a pair that has no number yet, and returns its number. */
  int add(int halfEdge, int with) {
    if (size == met.length) {
      older = Arrays.copyOf(older, 2 * size);
      met = Arrays.copyOf(met, 2 * size);
    }
    if (length(halfEdge) < LONGEST) {
      met[size] = with;
      older[size] = newest[halfEdge];
      newest[halfEdge] = size + 1;
    } else {
      others.put(LongMap.edge(halfEdge, with), size);
    }
    return size++;
  }

  private int length(int halfEdge) {
    int length = 0;
    for (int n = newest[halfEdge] - 1; n >= 0; n = older[n] - 1) {
      length++;
    }
    return length;
  }
}
