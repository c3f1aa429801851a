package outrigger.shapes.check;

import java.util.Locale;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/** A mesh's numbers in flat arrays, with the few questions all steps of the proof ask. */
final class Surface {
  private final int[] xyz;
  private final int[] corners;

  Surface(Mesh mesh) {
    xyz = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xyz[3 * v] = mesh.x(v);
      xyz[3 * v + 1] = mesh.y(v);
      xyz[3 * v + 2] = mesh.z(v);
    }
    corners = new int[3 * mesh.facetCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
  }

  int facets() {
    return corners.length / 3;
  }

  int vertices() {
    return xyz.length / 3;
  }

  int x(int v) {
    return xyz[3 * v];
  }

  int y(int v) {
    return xyz[3 * v + 1];
  }

  int z(int v) {
    return xyz[3 * v + 2];
  }

  int corner(int facet, int k) {
    return corners[3 * facet + k];
  }

  /** All coordinates, three a vertex; not to be changed. */
  int[] xyz() {
    return xyz;
  }

  /** All vertex numbers, three a facet; not to be changed. */
  int[] corners() {
    return corners;
  }

  boolean isInRange(int v) {
    return Math.abs((long) x(v)) <= Grid.LIMIT && Math.abs((long) y(v)) <= Grid.LIMIT
        && Math.abs((long) z(v)) <= Grid.LIMIT;
  }

  /** One component of (b - a) x (c - a), below 2^52; its length is twice the facet's area. */
  long normal(int facet, int axis) {
    int p = (axis + 1) % 3;
    int q = (axis + 2) % 3;
    int a = 3 * corner(facet, 0);
    int b = 3 * corner(facet, 1);
    int c = 3 * corner(facet, 2);
    return (long) (xyz[b + p] - xyz[a + p]) * (xyz[c + q] - xyz[a + q])
        - (long) (xyz[b + q] - xyz[a + q]) * (xyz[c + p] - xyz[a + p]);
  }

  boolean hasArea(int facet) {
    return normal(facet, 0) != 0 || normal(facet, 1) != 0 || normal(facet, 2) != 0;
  }

  /** A vertex in words, mm to the micrometre. */
  String words(int v) {
    return String.format(Locale.ROOT, "(%.3f, %.3f, %.3f)", Grid.toMm(x(v)), Grid.toMm(y(v)),
        Grid.toMm(z(v)));
  }

  /** A facet's corners in words. */
  String facetWords(int facet) {
    return words(corner(facet, 0)) + " " + words(corner(facet, 1)) + " " + words(corner(facet, 2));
  }
}
