package outrigger.generator.param;

import java.util.Locale;
import java.util.OptionalDouble;
import outrigger.presets.LengthText;
import outrigger.presets.Shelf;

/**
 * A length within a range, alone or with what it may be off, or the word for what is to be solved.
 *
 * @param range of the length, mm
 */
record MeasureForm(Range range) implements Form {
  private static final String SOLVE = "solve";
  private static final String EXAMPLE = "Write it such as 24, 24+-0.2, 0.95in+-10thou, or solve.";
  /** Widest spread that is still a measurement, mm. */
  private static final double WIDEST = 50;

  @Override
  public String kind() {
    return "measure";
  }

  @Override
  public String placeholder() {
    return "LENGTH+-OFF";
  }

  @Override
  public String allowed() {
    return range.words() + ", with +- what it may be off, or solve";
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    String plain = text.strip().replace("\u00b1", "+-");
    if (plain.toLowerCase(Locale.ROOT).equals(SOLVE)) {
      return Measure.FREE;
    }
    int sign = plain.indexOf("+-");
    double size = length(sign < 0 ? plain : plain.substring(0, sign), text);
    range.check(size);
    OptionalDouble off = OptionalDouble.empty();
    if (sign >= 0) {
      off = OptionalDouble.of(length(plain.substring(sign + 2), text));
      new Range(Unit.MM, 0, WIDEST).check(off.getAsDouble());
    }
    return new Measure(OptionalDouble.of(size), off);
  }

  private double length(String text, String whole) throws BadText {
    LengthText.Result result = LengthText.parse(text.strip());
    if (!result.isNumber()) {
      throw new BadText(Texts.quoted(whole), "not a length: " + result.reason().split("; ", 2)[0], allowed(), EXAMPLE);
    }
    return result.value().getAsDouble();
  }

  @Override
  public String print(Object value, String text) {
    Measure measure = (Measure) value;
    String off = measure.off().isPresent() ? " +- " + Texts.number(measure.off().getAsDouble()) : "";
    return measure.isFree() ? SOLVE : Texts.number(measure.mm()) + off;
  }
}
