package outrigger.presets;

/** Text of a user, made fit to stand in a one-line message. */
final class Quote {
  private static final int LONGEST = 60;
  /** The one control character of ASCII that comes after the letters. */
  private static final char DELETE = 127;

  private Quote() {}

  /** The text in quotes, control characters shown as ?, shortened past 60 characters. */
  static String of(String text) {
    StringBuilder line = new StringBuilder("\"");
    for (int i = 0; i < Math.min(text.length(), LONGEST); i++) {
      char c = text.charAt(i);
      line.append(c < ' ' || c == DELETE ? '?' : c);
    }
    return line.append(text.length() <= LONGEST ? "\"" : "...\"").toString();
  }
}
