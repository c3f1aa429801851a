package outrigger.shapes.check;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.Mesh;

/** The proof that a mesh is sound. Pending. */
public final class Proof {
  private Proof() {}

  /** What the proof found: the mesh sealed as proven, or the findings that speak against it. */
  public record Verdict(Optional<CheckedMesh> proven, List<Finding> findings, Measures measures) {}

  /** Judges a mesh. Never repairs, never throws for a bad mesh. */
  public static Verdict judge(Mesh mesh) {
    throw new UnsupportedOperationException("pending");
  }
}
