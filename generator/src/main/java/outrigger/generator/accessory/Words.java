package outrigger.generator.accessory;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers worded for a maker. */
public final class Words {
  private Words() {}

  /** A length to the nearest thousandth, as few digits as needed: {@code 3.4 mm}. */
  public static String mm(double value) {
    return number(value) + " mm";
  }

  /** A number to the nearest thousandth, as few digits as needed: {@code 3.4}. */
  public static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
  }
}
