package outrigger.shapes.num;

/** Sets of numbers that are joined one pair at a time; each set is known by its least number. */
public final class DisjointSets {
  private final int[] parent;

  /** So many numbers from 0 on, each a set by itself. */
  public DisjointSets(int size) {
    parent = new int[size];
    for (int i = 0; i < size; i++) {
      parent[i] = i;
    }
  }

  /** The least number of the set that a number is in. */
  public int find(int i) {
    int at = i;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  /** Makes one set of those of two numbers. */
  public void join(int i, int j) {
    int a = find(i);
    int b = find(j);
    parent[Math.max(a, b)] = Math.min(a, b);
  }

  /** Joins what others of the same numbers have joined; several threads may do so. */
  public synchronized void joinAll(DisjointSets others) {
    for (int i = 0; i < parent.length; i++) {
      join(i, others.find(i));
    }
  }
}
