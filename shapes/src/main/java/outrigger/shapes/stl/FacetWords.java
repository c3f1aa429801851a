package outrigger.shapes.stl;

/**
 * Waits for a facet in the line of a name, character by character: the words {@code facet normal} and a number. So a file
 * all in one line is read, and a name may still be of these words.
 */
final class FacetWords {
  private static final String WORDS = "facet normal ";
  private static final int SECOND = WORDS.indexOf("normal");
  /** Beginnings of numbers, and of what stands for none in a normal. */
  private static final String NUMBERS = "+-.0123456789ni";

  /** Characters of the words that have gone by, or -1 within another word. */
  private int at;

  /** Takes the next character; whether it is the first of the number. */
  boolean take(int b) {
    boolean isSpace = Content.isSpace(b);
    int c = isSpace ? ' ' : Character.toLowerCase(b);
    if (at == WORDS.length()) {
      if (isSpace) {
        return false;
      }
      if (NUMBERS.indexOf(c) >= 0) {
        return true;
      }
      at = 0;
    }
    if (at >= 0 && c == WORDS.charAt(at)) {
      at++;
    } else if (isSpace) {
      at = at == SECOND ? SECOND : 0;
    } else {
      at = at == SECOND && c == WORDS.charAt(0) ? 1 : -1;
    }
    return false;
  }

  /** Whether the character last taken may begin a facet. */
  boolean begins() {
    return at == 1;
  }
}
