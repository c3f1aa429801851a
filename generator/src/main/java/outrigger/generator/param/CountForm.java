package outrigger.generator.param;

import java.math.BigInteger;
import outrigger.presets.Shelf;

/** A whole number. */
record CountForm(Range range) implements Form {
  @Override
  public String kind() {
    return "count";
  }

  @Override
  public String placeholder() {
    return "COUNT";
  }

  @Override
  public String allowed() {
    return range.words();
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    String digits = text.strip();
    if (!digits.matches("[+-]?[0-9]{1,400}")) {
      throw new BadText(Texts.quoted(text), "not a whole number", allowed(),
          "Write a count such as " + Texts.number(range.min()) + ".");
    }
    double value = new BigInteger(digits).doubleValue();
    range.check(value);
    return (int) value;
  }

  @Override
  public String print(Object value, String text) {
    return value.toString();
  }
}
