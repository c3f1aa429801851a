package outrigger.shapes.check;

import outrigger.shapes.mesh.Mesh;

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

  /** What it measures. */
  public Measures measures() {
    return measures;
  }
}
