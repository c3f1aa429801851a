package outrigger.generator.measure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.solid.Solid;

/** Meshes for tests, none of them unproven. */
public final class Proven {
  private Proven() {}

  /** The mesh of a solid, proven sound. */
  public static CheckedMesh mesh(Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertTrue(verdict.proven().isPresent(), () -> verdict.findings().toString());
    return verdict.proven().get();
  }

  /** Callipers on the mesh of a solid. */
  public static MeshGauge gauge(Solid solid) {
    return MeshGauge.of(mesh(solid).mesh());
  }
}
