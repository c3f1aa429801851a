package outrigger.presets;

/** Text of a user, made fit to stand in a one-line message. */
final class Quote {
  private static final int LONGEST = 60;

  private Quote() {}

  /** The text in quotes, control characters shown as ?, shortened past 60 characters. */
  static String of(String text) {
    String line = text.replaceAll("\\p{Cntrl}", "?");
    return line.length() <= LONGEST ? '"' + line + '"' : '"' + line.substring(0, LONGEST) + "...\"";
  }
}
