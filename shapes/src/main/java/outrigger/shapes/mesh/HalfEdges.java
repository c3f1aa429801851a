package outrigger.shapes.mesh;

import java.util.Arrays;

/** Where each directed edge starts, its face and loop, which one follows it, and which runs the other way. */
final class HalfEdges {
  private int[] from = new int[64];
  private int[] face = new int[64];
  private int[] next = new int[64];
  private int[] loop = new int[64];
  private int[] twin = new int[64];
  private int size;
  private int loops;

  int size() {
    return size;
  }

  int loopCount() {
    return loops;
  }

  /**
   * Adds the edges of one loop of a face, in order.
   *
   * @param corners where they start
   * @param base what is added to those numbers
   */
  void addLoop(int ofFace, int[] corners, int base) {
    int edges = corners.length;
    if (size + edges > face.length) {
      int room = Math.max(size + edges, 2 * size);
      from = Arrays.copyOf(from, room);
      face = Arrays.copyOf(face, room);
      next = Arrays.copyOf(next, room);
      loop = Arrays.copyOf(loop, room);
      twin = Arrays.copyOf(twin, room);
    }
    int first = size;
    for (int i = 0; i < edges; i++) {
      from[size] = base + corners[i];
      face[size] = ofFace;
      loop[size] = loops;
      twin[size] = -1;
      next[size] = i + 1 < edges ? size + 1 : first;
      size++;
    }
    loops++;
  }

  /** Adds the edges of triangles, three corners each, numbered as their faces from 0. */
  void addTriangles(int[] corners) {
    int n = corners.length;
    from = corners.clone();
    face = new int[n];
    next = new int[n];
    loop = new int[n];
    twin = new int[n];
    Arrays.fill(twin, -1);
    for (int h = 0; h < n; h++) {
      face[h] = h / 3;
      loop[h] = h / 3;
      next[h] = FacetCorner.next(h);
    }
    size = n;
    loops = n / 3;
  }

  /**
   * Finds the half-edges that run the other way, as {@link Twins} does, counted from the first.
   *
   * @param first the first half-edge that is looked at, with all after it
   * @param base the least vertex they may start at
   * @param vertices how many such vertices there are
   */
  int[] twins(int first, int base, int vertices) {
    int[] starts = new int[size - first];
    int[] ends = new int[size - first];
    for (int h = first; h < size; h++) {
      starts[h - first] = from[h] - base;
      ends[h - first] = to(h) - base;
    }
    return Twins.of(starts, ends, vertices);
  }

  void setTwin(int h, int other) {
    twin[h] = other;
  }

  /** Vertex it starts at. */
  int from(int h) {
    return from[h];
  }

  /** Vertex it ends at. */
  int to(int h) {
    return from[next[h]];
  }

  /** Face whose edge it is. */
  int face(int h) {
    return face[h];
  }

  /** Loop of that face which it is part of. */
  int loop(int h) {
    return loop[h];
  }

  /** The half-edge after it in its loop. */
  int next(int h) {
    return next[h];
  }

  /** The half-edge of the neighbour that runs the other way; -1 where that is not known, as in a soup. */
  int twin(int h) {
    return twin[h];
  }

  /** The lower of a half-edge and its twin, which stands for the edge of both. */
  int edge(int h) {
    return Math.min(h, twin[h]);
  }
}
