package outrigger.generator.param;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outrigger.presets.Shelf;

/** A length, an angle or a plain number, within a range. */
record NumberForm(Range range) implements Form {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*(\\p{Alpha}*|\"|\u00b0)");
  private static final double MM_PER_INCH = 25.4;

  @Override
  public String kind() {
    return switch (range.unit()) {
      case MM -> "length";
      case DEGREES -> "angle";
      case NONE -> "number";
    };
  }

  @Override
  public String placeholder() {
    return range.unit() == Unit.DEGREES ? "DEGREES" : kind().toUpperCase(Locale.ROOT);
  }

  @Override
  public String allowed() {
    return range.words();
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    double value = read(text.strip());
    range.check(value);
    return value == 0 ? 0.0 : value;
  }

  private double read(String text) throws BadText {
    Matcher m = NUMBER_AND_UNIT.matcher(text);
    if (!m.matches()) {
      throw new BadText(Texts.quoted(text), "not " + article(), allowed(), example());
    }
    double number = Double.parseDouble(m.group(1));
    String unit = m.group(2);
    return switch (range.unit()) {
      case MM -> millimetres(text, number, unit);
      case DEGREES -> unit.isEmpty() || unit.equals("deg") || unit.equals("\u00b0") ? number : badUnit(text, unit);
      case NONE -> unit.isEmpty() ? number : badUnit(text, unit);
    };
  }

  private double millimetres(String text, double number, String unit) throws BadText {
    return switch (unit) {
      case "", "mm" -> number;
      case "in" -> number * MM_PER_INCH;
      case "thou" -> number * MM_PER_INCH / 1000;
      default -> badUnit(text, unit);
    };
  }

  private double badUnit(String text, String unit) throws BadText {
    throw new BadText(Texts.quoted(text), "not " + article() + ": " + Texts.quoted(unit) + " is no unit of it",
        allowed(), example());
  }

  private String article() {
    return range.unit() == Unit.DEGREES ? "an angle" : "a " + kind();
  }

  private String example() {
    return switch (range.unit()) {
      case MM -> "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.";
      case DEGREES -> "Write an angle in degrees, such as 30 or 30deg.";
      case NONE -> "Write a number without a unit, such as 1.5.";
    };
  }

  @Override
  public String print(Object value, String text) {
    return Texts.number((Double) value);
  }
}
