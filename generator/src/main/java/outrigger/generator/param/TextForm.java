package outrigger.generator.param;

import outrigger.presets.Shelf;

/**
 * Free text.
 *
 * @param longest greatest number of characters
 */
record TextForm(int longest) implements Form {
  @Override
  public String kind() {
    return "text";
  }

  @Override
  public String placeholder() {
    return "TEXT";
  }

  @Override
  public String allowed() {
    return "at most " + longest + " characters";
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    if (text.chars().anyMatch(Character::isISOControl)) {
      throw new BadText(Texts.quoted(text), "which holds a control character", "printable characters",
          "Leave out line breaks, tabs and other control characters.");
    }
    if (text.length() > longest) {
      throw new BadText(Texts.quoted(text), text.length() + " characters long, above the maximum of " + longest,
          allowed(), "Shorten it.");
    }
    return text;
  }

  @Override
  public String print(Object value, String text) {
    return text;
  }
}
