package outrigger.shapes.num;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text, a point in every locale. */
public final class Decimals {
  private Decimals() {}

  /**
   * A number with so many places, as {@code String.format(Locale.ROOT, "%.2f", value)} writes it for two. That one first
   * loads what is known of all locales, which takes longer than making a small part.
   *
   * @param value finite
   * @param places 0 or more
   */
  public static String fixed(double value, int places) {
    String digits = BigDecimal.valueOf(Math.abs(value)).setScale(places, RoundingMode.HALF_UP).toPlainString();
    return Double.compare(value, 0) < 0 ? "-" + digits : digits;
  }
}
