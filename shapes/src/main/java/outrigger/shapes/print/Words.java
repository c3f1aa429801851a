package outrigger.shapes.print;

import java.util.Locale;

/** Numbers as a maker reads them: no more places than asked for, no trailing zeros, a point. */
final class Words {
  private Words() {}

  static String mm(double value) {
    return number(value, 2) + " mm";
  }

  static String degrees(double value) {
    return number(value, 1) + " degrees";
  }

  static String number(double value, int places) {
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    String plain = text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    return plain.equals("-0") ? "0" : plain;
  }
}
