package outrigger.generator.param;

import java.util.ArrayList;
import java.util.List;
import outrigger.presets.Shelf;

/**
 * Values of one form, separated by commas; an empty text is an empty list.
 *
 * @param element form of each value
 */
record ListForm(Form element) implements Form {
  @Override
  public String kind() {
    return "list";
  }

  @Override
  public String placeholder() {
    return element.placeholder() + ",...";
  }

  @Override
  public String allowed() {
    return element.allowed().isEmpty() ? "" : "each " + element.allowed();
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    return parse(split(text), shelf);
  }

  List<Object> parse(List<String> texts, Shelf shelf) throws BadText {
    List<Object> values = new ArrayList<>();
    for (String text : texts) {
      values.add(element.parse(text, shelf));
    }
    return List.copyOf(values);
  }

  static List<String> split(String text) {
    if (text.isBlank()) {
      return List.of();
    }
    List<String> texts = new ArrayList<>();
    for (String piece : text.split(",", -1)) {
      texts.add(piece.strip());
    }
    return texts;
  }

  @Override
  public String print(Object value, String text) {
    return print((List<?>) value, split(text));
  }

  String print(List<?> values, List<String> texts) {
    List<String> printed = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      printed.add(element.print(values.get(i), texts.get(i)));
    }
    return String.join(", ", printed);
  }
}
