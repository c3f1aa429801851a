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
    return number(value, 3);
  }

  /** A length as it is engraved, to the nearest hundredth: no printer tells thousandths apart. */
  public static String mark(double value) {
    return number(value, 2);
  }

  private static String number(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
  }
}
