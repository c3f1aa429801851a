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

  /** How many there are at a vertex. */
  int count(int vertex) {
    return first[vertex + 1] - first[vertex];
  }

  /** One of those at a vertex, from 0 on: the least facet first. */
  int get(int vertex, int i) {
    return facets[first[vertex] + i];
  }

  void forEach(int vertex, IntConsumer told) {
    for (int i = 0; i < count(vertex); i++) {
      told.accept(get(vertex, i));
    }
  }
}
