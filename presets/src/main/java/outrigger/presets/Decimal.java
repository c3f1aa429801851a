package outrigger.presets;

/** Finds a decimal number at the beginning of a text. By hand: loading what reads patterns takes longer than a table. */
final class Decimal {
  private static final int MOST_EXPONENT_DIGITS = 9;

  private Decimal() {}

  /**
   * Where the longest number ends that a text begins with: a sign or none, digits with a point among or before them or none,
   * an exponent of up to nine digits or none. 0 if it begins with no number.
   */
  static int end(String text) {
    int from = sign(text, 0);
    int whole = digits(text, from, text.length());
    int end = whole;
    if (whole < text.length() && text.charAt(whole) == '.') {
      int decimals = digits(text, whole + 1, text.length());
      end = whole > from || decimals > whole + 1 ? decimals : whole;
    }
    return end == from ? 0 : exponent(text, end);
  }

  private static int exponent(String text, int end) {
    if (end == text.length() || text.charAt(end) != 'e' && text.charAt(end) != 'E') {
      return end;
    }
    int from = sign(text, end + 1);
    int to = digits(text, from, Math.min(text.length(), from + MOST_EXPONENT_DIGITS));
    return to > from ? to : end;
  }

  private static int sign(String text, int at) {
    return at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-') ? at + 1 : at;
  }

  private static int digits(String text, int from, int to) {
    int at = from;
    while (at < to && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }
}
