package outrigger.presets;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a preset value comes from.
 *
 * @param kind what standing it has
 * @param text the title of the source, or what the practice is
 */
public record Source(Kind kind, String text) {
  /** Standing of a value. */
  public enum Kind {
    /** A figure of a published standard, as a published table quotes it. */
    STANDARD,
    /** What the trade does; nothing published vouches for it. */
    COMMON_PRACTICE,
    /** Made up for the demonstration fleet. */
    INVENTED_DEMO,
    /** From a table file of the user. */
    USER;

    /** The word that table files use, such as {@code common-practice}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Kind> of(String word) {
      for (Kind kind : values()) {
        if (kind.word().equals(word)) {
          return Optional.of(kind);
        }
      }
      return Optional.empty();
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Kind::word).toList();
    }
  }

  public Source {
    Checks.text("text of a source", text);
  }
}
