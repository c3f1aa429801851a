package outrigger.shapes.print;

import outrigger.shapes.num.Decimals;

/** Numbers as a maker reads them: no more places than asked for, no trailing zeros, a point. */
public final class Words {
  /** Areas below it would be told as nothing, in tenths, mm^2. */
  public static final double LEAST_AREA = 0.05;

  private Words() {}

  /** A length, to the hundredth. */
  public static String mm(double value) {
    return number(value, 2) + " mm";
  }

  /** An angle, to the tenth. */
  public static String degrees(double value) {
    return number(value, 1) + " degrees";
  }

  /** A number with no more places than given. */
  public static String number(double value, int places) {
    String text = Decimals.fixed(value, places);
    int end = text.length();
    if (text.indexOf('.') >= 0) {
      while (text.charAt(end - 1) == '0') {
        end--;
      }
      end -= text.charAt(end - 1) == '.' ? 1 : 0;
    }
    String plain = text.substring(0, end);
    return plain.equals("-0") ? "0" : plain;
  }
}
