package outrigger.shapes.check;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.solid.Faceted;

/** A mesh proven sound. Only {@link Proof} makes one, and only such a mesh can be written. */
public final class CheckedMesh {
  private final Mesh mesh;
  private final Measures measures;

  CheckedMesh(Mesh mesh, Measures measures) {
    this.mesh = mesh;
    this.measures = measures;
  }

  /** The proven mesh. */
  public Mesh mesh() {
    return mesh;
  }

  /** The same as a solid, to be placed, joined, cut and met like any other. */
  public Faceted solid() {
    int[] xyz = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xyz[3 * v] = mesh.x(v);
      xyz[3 * v + 1] = mesh.y(v);
      xyz[3 * v + 2] = mesh.z(v);
    }
    int[] corners = new int[3 * mesh.facetCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    return Faceted.of(xyz, corners);
  }

  /** What it measures. */
  public Measures measures() {
    return measures;
  }
}
