package outrigger.generator.param;

import java.util.Locale;
import outrigger.presets.Shelf;

/** Yes or no. */
record YesNoForm() implements Form {
  @Override
  public String kind() {
    return "yes-no";
  }

  @Override
  public String placeholder() {
    return "yes|no";
  }

  @Override
  public String allowed() {
    return "yes or no";
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw new BadText(Texts.quoted(text), "neither yes nor no", allowed(), "Write yes or no.");
    };
  }

  @Override
  public String print(Object value, String text) {
    return (Boolean) value ? "yes" : "no";
  }
}
