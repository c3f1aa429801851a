package outrigger.shapes.mesh.settle;

import java.util.function.IntConsumer;

/** The facets at each vertex. */
final class FacetsAt {
  /** Where in {@link #facets} those at each vertex begin. */
  private final int[] first;
  private final int[] facets;

  /**
   * Of so many vertices.
   *
   * @param corners three vertex numbers a facet
   */
  FacetsAt(int vertices, int[] corners) {
    first = new int[vertices + 1];
    for (int v : corners) {
      first[v + 1]++;
    }
    for (int v = 0; v < vertices; v++) {
      first[v + 1] += first[v];
    }
    facets = new int[corners.length];
    int[] end = first.clone();
    for (int c = 0; c < corners.length; c++) {
      facets[end[corners[c]]++] = c / 3;
    }
  }

  /** The least of those at a vertex. */
  int least(int vertex) {
    return facets[first[vertex]];
  }

  void forEach(int vertex, IntConsumer told) {
    for (int i = first[vertex]; i < first[vertex + 1]; i++) {
      told.accept(facets[i]);
    }
  }
}
