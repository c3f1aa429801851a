package outrigger.generator.param;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers and names as text, the same on every machine. */
public final class Texts {
  private static final int SHOWN_AT_MOST = 60;

  private Texts() {}

  /** A number with at most six decimals, no trailing zeros and no exponent below 10^9. */
  public static String number(double value) {
    if (!Double.isFinite(value) || Math.abs(value) >= 1e9) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(Double.toString(value)).setScale(6, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number with its unit, such as {@code 0.6 mm}. */
  public static String number(double value, Unit unit) {
    return switch (unit) {
      case DEGREES -> number(value) + (value == 1 ? " degree" : " degrees");
      case MM, GRAMS, CELSIUS -> number(value) + " " + unit.word();
      case NONE -> number(value);
    };
  }

  /** A user's text in quotes, control characters shown as question marks, shortened when long. */
  public static String quoted(String text) {
    return '"' + plain(text) + '"';
  }

  /** A user's text on one line, control characters shown as question marks, shortened when long. */
  public static String plain(String text) {
    StringBuilder shown = new StringBuilder();
    int end = Math.min(text.length(), SHOWN_AT_MOST);
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      shown.append(Character.isISOControl(c) ? '?' : c);
    }
    return shown.append(text.length() > end ? "..." : "").toString();
  }

  /** {@code wallThickness} as {@code wall-thickness}, {@code m3x12} unchanged. */
  static String kebab(String camel) {
    StringBuilder key = new StringBuilder();
    for (char c : camel.toCharArray()) {
      if (Character.isUpperCase(c)) {
        key.append('-');
      }
      key.append(Character.toLowerCase(c));
    }
    return key.toString();
  }

  /** An enum constant as users write it: {@code LEFT_HAND} as {@code left-hand}. */
  public static String choice(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
