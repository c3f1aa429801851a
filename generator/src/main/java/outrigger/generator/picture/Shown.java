package outrigger.generator.picture;

import outrigger.shapes.check.CheckedMesh;

/**
 * A part to be drawn.
 *
 * @param name what is written under it; may be empty
 * @param mesh its shape, Z up
 */
public record Shown(String name, CheckedMesh mesh) {}
