package outrigger.shapes.print.facet;

import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;

/**
 * Which facet lies across each edge of a sound mesh.
 *
 * <p>Half-edge h runs from corner h % 3 of facet h / 3 to that facet's next corner. Found in linear time.
 */
public final class Seams {
  private final int[] twin;

  private Seams(int[] twin) {
    this.twin = twin;
  }

  /** Those of a mesh. */
  public static Seams of(Mesh mesh) {
    int halves = 3 * mesh.facetCount();
    int[] start = new int[mesh.vertexCount() + 1];
    for (int h = 0; h < halves; h++) {
      start[Math.min(from(mesh, h), to(mesh, h)) + 1]++;
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      start[v + 1] += start[v];
    }
    int[] fill = Arrays.copyOf(start, mesh.vertexCount());
    int[] atLower = new int[halves];
    for (int h = 0; h < halves; h++) {
      atLower[fill[Math.min(from(mesh, h), to(mesh, h))]++] = h;
    }
    return new Seams(pair(mesh, start, atLower));
  }

  /** Of the half-edges at one lower vertex, two share each upper vertex. */
  private static int[] pair(Mesh mesh, int[] start, int[] atLower) {
    int[] twin = new int[atLower.length];
    int[] waiting = new int[mesh.vertexCount()];
    int[] since = new int[mesh.vertexCount()];
    Arrays.fill(since, -1);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      for (int i = start[v]; i < start[v + 1]; i++) {
        int h = atLower[i];
        int upper = Math.max(from(mesh, h), to(mesh, h));
        if (since[upper] == v) {
          twin[h] = waiting[upper];
          twin[waiting[upper]] = h;
        } else {
          since[upper] = v;
          waiting[upper] = h;
        }
      }
    }
    return twin;
  }

  /** The half-edge that runs the same edge the other way. */
  public int across(int half) {
    return twin[half];
  }

  /** The vertex a half-edge begins at. */
  public static int from(Mesh mesh, int half) {
    return mesh.corner(half / 3, half % 3);
  }

  /** The vertex a half-edge ends at. */
  public static int to(Mesh mesh, int half) {
    return mesh.corner(half / 3, (half % 3 + 1) % 3);
  }
}
