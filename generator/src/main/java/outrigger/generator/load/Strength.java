package outrigger.generator.load;

import java.util.Locale;
import java.util.Map;

/**
 * What plastic bears between its layers, MPa.
 *
 * @param material name of the filament
 * @param solid yield strength of the solid plastic: the least of the range that generic property databases give
 * @param layers share of it that holds between layers
 */
public record Strength(String material, double solid, double layers) {
  /** Least yield strengths of generic property databases and handbooks, typical ranges; no allowables. */
  private static final Map<String, Double> LEAST = Map.of("pla", 40.0, "petg", 44.0, "abs", 29.0, "asa", 35.0, "pa12", 40.0,
      "hips", 15.0);
  /** Half: a working figure of our own; printed tests scatter from a third to nearly all. */
  private static final double LAYERS = 0.5;

  public Strength {
    if (!(solid > 0 && layers > 0 && layers <= 1)) {
      throw new IllegalArgumentException(solid + " MPa, " + layers);
    }
  }

  /** Of a filament by its name; of one that is not known, the weakest that is. */
  public static Strength of(String material) {
    double least = LEAST.values().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    return new Strength(material, LEAST.getOrDefault(material.toLowerCase(Locale.ROOT), least), LAYERS);
  }

  /** What holds between layers, MPa. */
  public double across() {
    return solid * layers;
  }
}
