package outrigger.presets;

/** Where the brackets of a TOML text are nested deepest: the parser, which runs out of stack there, does not say. */
public final class Nesting {
  private Nesting() {}

  /**
   * The line, counted from 1, with the first bracket that more are open around than around any before it. Texts in quotes
   * are passed by where they end on their line.
   */
  public static int deepestLine(String text) {
    int line = 1;
    int deepest = 1;
    int depth = 0;
    int most = 0;
    char quote = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
        quote = 0;
      } else if (quote != 0) {
        i += quote == '"' && text.startsWith("\\\"", i) ? 1 : 0;
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '#') {
        quote = '\n';
      } else if (c == '[' || c == '{') {
        depth++;
        if (depth > most) {
          most = depth;
          deepest = line;
        }
      } else if (c == ']' || c == '}') {
        depth--;
      }
    }
    return deepest;
  }
}
