package outrigger.generator.run;

import java.util.List;
import java.util.Optional;
import outrigger.presets.Material;

/**
 * Parts made together.
 *
 * @param plan name of the plan file, empty where there is none
 * @param title heading, may be empty
 * @param material what they are printed in, if it is said
 * @param parts in the order of the plan
 */
public record Batch(String plan, String title, Optional<Material> material, List<Made> parts) {
  private static final double MM3_PER_CM3 = 1000;

  public Batch {
    parts = List.copyOf(parts);
  }

  /** What a part weighs printed solid, in grams, if the material is said. */
  public Optional<Double> mass(Made part) {
    return material.map(m -> part.measures().volume() / MM3_PER_CM3 * m.density());
  }
}
