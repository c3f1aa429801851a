package outrigger.generator.joint;

import java.util.Locale;

/**
 * So many of one thing that a part is assembled with.
 *
 * @param kind what sort of thing it is
 * @param article what one asks for in a shop, such as {@code M3 nut (ISO 4032)}
 * @param count 1 or more
 */
public record Piece(Kind kind, String article, int count) {
  /** Sorts of hardware, in the order they are listed. */
  public enum Kind {
    /** A screw of one size, head and length. */
    SCREW,
    /** A hexagon nut. */
    NUT,
    /** A plain washer. */
    WASHER,
    /** A brass insert melted into plastic. */
    INSERT,
    /** A disc magnet. */
    MAGNET,
    /** Anything else, such as a steel disc. */
    OTHER;

    /** The word for it in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Piece {
    if (article.isBlank() || count < 1) {
      throw new IllegalArgumentException(count + " x " + article);
    }
  }

  /** So many times as many. */
  public Piece times(int factor) {
    return new Piece(kind, article, count * factor);
  }

  /** As one line, such as {@code 2 x M3 nut (ISO 4032)}. */
  public String line() {
    return count + " x " + article;
  }
}
