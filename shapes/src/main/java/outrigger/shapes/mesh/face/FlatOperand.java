package outrigger.shapes.mesh.face;

import java.util.List;
import outrigger.shapes.mesh.leaf.Polyhedron;

/** A closed polyhedron with flat neighbours joined, its edges and loops counted from face to face. */
final class FlatOperand {
  private final List<int[][]> faces;
  private final int[] firstEdge;
  private final int[] firstLoop;

  private FlatOperand(List<int[][]> faces) {
    this.faces = faces;
    firstEdge = new int[faces.size() + 1];
    firstLoop = new int[faces.size() + 1];
    int f = 0;
    for (int[][] loops : faces) {
      int edges = 0;
      for (int[] loop : loops) {
        edges += loop.length;
      }
      firstEdge[f + 1] = firstEdge[f] + edges;
      firstLoop[f + 1] = firstLoop[f++] + loops.length;
    }
  }

  static FlatOperand of(Polyhedron polyhedron) {
    return new FlatOperand(FlatFaces.of(polyhedron));
  }

  int faceCount() {
    return faces.size();
  }

  int edgeCount() {
    return firstEdge[faces.size()];
  }

  int loopCount() {
    return firstLoop[faces.size()];
  }

  /** The loops of a face. */
  int[][] loops(int face) {
    return faces.get(face);
  }

  /** Number of a face's first edge; those of the next one begin where they end. */
  int firstEdge(int face) {
    return firstEdge[face];
  }

  /** Number of a face's first loop. */
  int firstLoop(int face) {
    return firstLoop[face];
  }
}
