package outrigger.generator.param;

import java.util.Locale;
import outrigger.presets.LengthText;
import outrigger.presets.MassText;
import outrigger.presets.Shelf;

/** A length, an angle, a mass, a temperature or a plain number, within a range. */
record NumberForm(Range range) implements Form {
  @Override
  public String kind() {
    return switch (range.unit()) {
      case MM -> "length";
      case DEGREES -> "angle";
      case GRAMS -> "mass";
      case CELSIUS -> "temperature";
      case NONE -> "number";
    };
  }

  @Override
  public String placeholder() {
    return switch (range.unit()) {
      case DEGREES -> range.unit().name();
      default -> kind().toUpperCase(Locale.ROOT);
    };
  }

  @Override
  public String allowed() {
    return range.words();
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    double value = read(text.strip());
    range.check(value);
    return value;
  }

  private double read(String text) throws BadText {
    LengthText.Result result = switch (range.unit()) {
      case MM -> LengthText.parse(text);
      case DEGREES -> LengthText.parseNumber(text.replaceFirst("\\s*(deg|\u00b0)$", ""));
      case GRAMS -> MassText.parse(text);
      case CELSIUS -> LengthText.parseNumber(text.replaceFirst("\\s*C$", ""));
      case NONE -> LengthText.parseNumber(text);
    };
    if (!result.isNumber()) {
      String article = range.unit() == Unit.DEGREES ? "an angle" : "a " + kind();
      throw new BadText(Texts.quoted(text), "not " + article + ": " + result.reason().split("; ", 2)[0], allowed(),
          example());
    }
    return result.value().getAsDouble();
  }

  private String example() {
    return switch (range.unit()) {
      case MM -> "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.";
      case DEGREES -> "Write an angle in degrees, such as 30 or 30deg.";
      case GRAMS -> "Write a mass in g, kg, oz or lb, such as 150, 150g, 0.4kg or 6oz.";
      case CELSIUS -> "Write a temperature in degrees Celsius, such as 40 or 40C.";
      case NONE -> "Write a number without a unit, such as 1.5.";
    };
  }

  @Override
  public String print(Object value, String text) {
    return Texts.number((Double) value);
  }
}
