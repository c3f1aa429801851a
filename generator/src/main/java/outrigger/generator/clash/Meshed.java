package outrigger.generator.clash;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Placement;

/**
 * The mesh of an element that was made before, and where it goes.
 *
 * @param pose to truck axes, not mirroring
 */
public record Meshed(Mesh mesh, Placement pose) {
  public Meshed {
    if (pose.mirrors()) {
      throw new IllegalArgumentException("a mesh mirrored is inside out");
    }
  }
}
