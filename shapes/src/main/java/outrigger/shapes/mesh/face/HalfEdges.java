package outrigger.shapes.mesh.face;

import java.util.Arrays;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.num.Workers;

/** Where each directed edge starts, its face and loop, which one follows it, and which runs the other way. */
public final class HalfEdges {
  /** Edges that are worth a thread. */
  private static final int AT_ONCE = 1 << 15;

  private int[] from = {};
  private int[] face = {};
  private int[] next = {};
  private int[] loop = {};
  private int[] twin = {};
  private int size;
  private int loops;

  /** Number of half-edges. */
  public int size() {
    return size;
  }

  /** Number of loops. */
  public int loopCount() {
    return loops;
  }

  /** Makes room for so many edges and loops in all, to be put where they belong, in any order. */
  void grow(int edges, int allLoops) {
    size = edges;
    loops = allLoops;
    from = Arrays.copyOf(from, size);
    face = Arrays.copyOf(face, size);
    next = Arrays.copyOf(next, size);
    loop = Arrays.copyOf(loop, size);
    twin = Arrays.copyOf(twin, size);
  }

  /**
   * Puts the edges of one loop of a face, in order.
   *
   * @param first number of the first of them
   * @param number number of the loop
   * @param ofFace the face
   * @param corners where they start
   * @param base what is added to those numbers
   */
  void putLoop(int first, int number, int ofFace, int[] corners, int base) {
    int end = first + corners.length;
    for (int h = first; h < end; h++) {
      from[h] = base + corners[h - first];
      face[h] = ofFace;
      loop[h] = number;
      twin[h] = -1;
      next[h] = h + 1 < end ? h + 1 : first;
    }
  }

  /** Adds the edges of triangles, three corners each, numbered as their faces from 0; some threads do. */
  void addTriangles(int[] corners, Workers workers) {
    int n = corners.length;
    from = corners.clone();
    face = new int[n];
    next = new int[n];
    // each has one loop, of its own number
    loop = face;
    twin = new int[n];
    workers.split(n, AT_ONCE, (first, end) -> {
      for (int h = first; h < end; h++) {
        face[h] = h / 3;
        next[h] = FacetCorner.next(h);
        twin[h] = -1;
      }
    });
    size = n;
    loops = n / 3;
  }

  /**
   * Finds the half-edges that run the other way, as {@link Twins} does, counted from the first.
   *
   * @param first the first half-edge that is looked at
   * @param end that after the last
   * @param base the least vertex they may start at
   * @param vertices how many such vertices there are
   * @param workers do it
   */
  public int[] twins(int first, int end, int base, int vertices, Workers workers) {
    int[] starts = new int[end - first];
    int[] ends = new int[end - first];
    workers.split(end - first, AT_ONCE, (one, other) -> {
      for (int i = one; i < other; i++) {
        starts[i] = from[first + i] - base;
        ends[i] = to(first + i) - base;
      }
    });
    return Twins.of(starts, ends, vertices, workers);
  }

  /** Says which half-edge runs the other way. */
  public void setTwin(int h, int other) {
    twin[h] = other;
  }

  /** Vertex it starts at. */
  public int from(int h) {
    return from[h];
  }

  /** Vertex it ends at. */
  public int to(int h) {
    return from[next[h]];
  }

  /** Face whose edge it is. */
  public int face(int h) {
    return face[h];
  }

  /** Loop of that face which it is part of. */
  public int loop(int h) {
    return loop[h];
  }

  /** The half-edge after it in its loop. */
  public int next(int h) {
    return next[h];
  }

  /** The half-edge of the neighbour that runs the other way; -1 where that is not known, as in a soup. */
  public int twin(int h) {
    return twin[h];
  }

  /** The lower of a half-edge of a solid operand and its twin, which stands for the edge of both. */
  public int edge(int h) {
    return Math.min(h, twin[h]);
  }
}
