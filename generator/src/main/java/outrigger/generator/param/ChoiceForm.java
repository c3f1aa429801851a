package outrigger.generator.param;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.presets.Shelf;

/**
 * One of a few words.
 *
 * @param constants the enum's constants, in their order
 */
record ChoiceForm(List<Enum<?>> constants) implements Form {
  ChoiceForm {
    constants = List.copyOf(constants);
  }

  static ChoiceForm of(Class<?> type) {
    List<Enum<?>> constants = new ArrayList<>();
    for (Object constant : type.getEnumConstants()) {
      constants.add((Enum<?>) constant);
    }
    return new ChoiceForm(constants);
  }

  List<String> words() {
    return constants.stream().map(Texts::choice).toList();
  }

  @Override
  public String kind() {
    return "choice";
  }

  @Override
  public String placeholder() {
    return String.join("|", words());
  }

  @Override
  public String allowed() {
    return String.join(", ", words());
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    String word = text.strip().toLowerCase(Locale.ROOT).replace('_', '-');
    for (Enum<?> constant : constants) {
      if (Texts.choice(constant).equals(word)) {
        return constant;
      }
    }
    throw new BadText(Texts.quoted(text), "not one of: " + allowed(), allowed(), NearMiss.advice(word, words()));
  }

  @Override
  public String print(Object value, String text) {
    return Texts.choice((Enum<?>) value);
  }
}
