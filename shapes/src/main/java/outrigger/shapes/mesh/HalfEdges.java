package outrigger.shapes.mesh;

import java.util.Arrays;

/** Which face and loop each directed edge belongs to, which one follows it, and which one runs the other way. */
final class HalfEdges {
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

  /** Adds the edges of one loop of a face, in order. */
  void addLoop(int ofFace, int edges) {
    if (size + edges > face.length) {
      int room = Math.max(size + edges, 2 * size);
      face = Arrays.copyOf(face, room);
      next = Arrays.copyOf(next, room);
      loop = Arrays.copyOf(loop, room);
      twin = Arrays.copyOf(twin, room);
    }
    int first = size;
    for (int i = 0; i < edges; i++) {
      face[size] = ofFace;
      loop[size] = loops;
      twin[size] = -1;
      next[size] = i + 1 < edges ? size + 1 : first;
      size++;
    }
    loops++;
  }

  void setTwin(int h, int other) {
    twin[h] = other;
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
