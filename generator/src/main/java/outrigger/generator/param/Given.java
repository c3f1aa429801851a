package outrigger.generator.param;

import java.util.List;

/**
 * What was given for a parameter, still as text.
 *
 * @param texts the value, or the values of a list
 * @param isList whether it was given as a list, so that its texts are not to be split at commas
 * @param origin where it was written
 */
public record Given(List<String> texts, boolean isList, Origin origin) {
  public Given {
    texts = List.copyOf(texts);
    if (!isList && texts.size() != 1) {
      throw new IllegalArgumentException("one text for a single value, not " + texts.size());
    }
  }

  /** A single value. */
  public static Given of(String text, Origin origin) {
    return new Given(List.of(text), false, origin);
  }

  /** A list. */
  public static Given list(List<String> texts, Origin origin) {
    return new Given(texts, true, origin);
  }

  /** As the user wrote it. */
  public String text() {
    return isList ? "[" + String.join(", ", texts) + "]" : texts.get(0);
  }
}
