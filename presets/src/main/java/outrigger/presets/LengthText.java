package outrigger.presets;

import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Reads lengths as people write them: {@code 6}, {@code 6mm}, {@code 0.25in}, {@code 40thou}. The decimal sign is a
 * point in every locale. What {@link Double#parseDouble} would take beyond that (NaN, Infinity, hexadecimal,
 * {@code 3d}, {@code 3f}) is refused, and so is what overflows.
 */
public final class LengthText {
  /** Millimetres in each unit: the international inch is 25.4 mm exactly, a thou is a thousandth of it. */
  private static final Map<String, BigDecimal> MM_PER = Map.of("", BigDecimal.ONE, "mm", BigDecimal.ONE,
      "in", new BigDecimal("25.4"), "thou", new BigDecimal("0.0254"));

  private static final int LONGEST = 64;

  private LengthText() {}

  /**
   * What came of reading a text: a number, or the reason why it is none.
   *
   * @param value the number (for a length, in mm), empty if the text was refused
   * @param reason what is wrong and what to write, for use after "... is TEXT: "; empty text if there is a number
   */
  public record Result(OptionalDouble value, String reason) {
    /** Whether a number came out. */
    public boolean isNumber() {
      return value.isPresent();
    }
  }

  /** Reads a length, in mm unless it carries {@code mm}, {@code in} or {@code thou}; any sign and 0 are let through. */
  public static Result parse(String text) {
    return parse(text, "mm");
  }

  /**
   * Reads a length whose unit, where the text carries none, is the one given.
   *
   * @param unit {@code mm}, {@code in} or {@code thou}
   * @throws IllegalArgumentException if the unit is none of these
   */
  public static Result parse(String text, String unit) {
    if (!isUnit(unit)) {
      throw new IllegalArgumentException("unit is " + Quote.of(unit) + ", but must be mm, in or thou.");
    }
    return parse(text, MM_PER, unit, "mm, in or thou", "a number with mm, in or thou, such as 6, 6mm, 0.25in or 40thou");
  }

  /**
   * Reads a number with a unit, or without one.
   *
   * @param factors what one of each unit is
   * @param unit the one meant where the text carries none
   * @param units all of them, in words
   * @param wanted what to write, in words
   */
  static Result parse(String text, Map<String, BigDecimal> factors, String unit, String units, String wanted) {
    String trimmed = text.strip();
    int end = Decimal.end(trimmed);
    if (trimmed.length() > LONGEST || end == 0) {
      return refused(whyNoNumber(trimmed, wanted));
    }
    String suffix = trimmed.substring(end).strip();
    if (!factors.containsKey(suffix)) {
      return refused(isComma(trimmed) || isFraction(trimmed) ? whyNoNumber(trimmed, "")
          : "unknown unit " + Quote.of(suffix) + "; use " + units);
    }
    return scaled(trimmed.substring(0, end), factors.get(suffix.isEmpty() ? unit : suffix));
  }

  /** Reads a plain decimal number, without a unit. */
  public static Result parseNumber(String text) {
    String trimmed = text.strip();
    if (trimmed.length() > LONGEST || trimmed.isEmpty() || Decimal.end(trimmed) != trimmed.length()) {
      return refused(whyNoNumber(trimmed, "a plain number, such as 45 or 0.2"));
    }
    return scaled(trimmed, BigDecimal.ONE);
  }

  /** Whether this is a unit of length that can be written: {@code mm}, {@code in} or {@code thou}. */
  public static boolean isUnit(String unit) {
    return !unit.isEmpty() && MM_PER.containsKey(unit);
  }

  /** Scales in decimal and rounds once, so that 0.1in is the double nearest to 2.54. */
  private static Result scaled(String number, BigDecimal factor) {
    double value = new BigDecimal(number).multiply(factor).doubleValue();
    // Adding 0 turns -0.0, which would print as -0, into 0.
    return Double.isFinite(value) ? new Result(OptionalDouble.of(value + 0.0), "")
        : refused("too large a number; use a smaller one");
  }

  private static String whyNoNumber(String text, String wanted) {
    if (text.isEmpty()) {
      return "empty; write " + wanted;
    }
    if (isComma(text)) {
      return "a decimal comma is not read; write a point instead of the comma";
    }
    if (isFraction(text)) {
      return "a fraction is not read; write it as a decimal, such as 0.125in for an eighth";
    }
    return text.length() > LONGEST ? "longer than " + LONGEST + " characters; write " + wanted
        : "not a number; write " + wanted;
  }

  private static boolean isComma(String text) {
    return text.matches("[+-]?[0-9]+,[0-9]+ *[a-z]*");
  }

  private static boolean isFraction(String text) {
    return text.matches("[+-]?[0-9]+(?:[ -][0-9]+)? */ *[0-9]+ *[a-z]*");
  }

  private static Result refused(String reason) {
    return new Result(OptionalDouble.empty(), reason);
  }
}
