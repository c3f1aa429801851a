package outrigger.presets;

import java.math.BigDecimal;
import java.util.Map;

/** Reads masses as people write them: {@code 150}, {@code 150g}, {@code 0.4kg}, {@code 6oz}, {@code 1lb}. */
public final class MassText {
  /** Grams in each unit: the avoirdupois pound is 453.59237 g exactly, an ounce a sixteenth of it. */
  private static final Map<String, BigDecimal> GRAMS_PER = Map.of("", BigDecimal.ONE, "g", BigDecimal.ONE,
      "kg", new BigDecimal("1000"), "oz", new BigDecimal("28.349523125"), "lb", new BigDecimal("453.59237"));

  private MassText() {}

  /**
   * Reads a mass, in g unless it carries {@code g}, {@code kg}, {@code oz} or {@code lb}; any sign and 0 are let through.
   */
  public static LengthText.Result parse(String text) {
    return LengthText.parse(text, GRAMS_PER, "g", "g, kg, oz or lb", "a number with g, kg, oz or lb, such as 150, 0.4kg or 6oz");
  }
}
