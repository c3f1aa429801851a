package outrigger.generator.param;

/**
 * Where a value was written.
 *
 * @param kind who gave it; later kinds override earlier ones
 * @param name file of a plan, or the option, such as {@code --post-height}; empty for a default
 * @param line line in the file, from 1; 0 where there is none
 * @param column column in the line, from 1; 0 where there is none
 */
public record Origin(Kind kind, String name, int line, int column) {

  /** Who gave a value, in order of force. */
  public enum Kind { DEFAULT, SOLVED, PLAN, OPTION }

  /** The default declared with the parameter. */
  public static final Origin DEFAULT = new Origin(Kind.DEFAULT, "", 0, 0);

  /** A place in a plan file. */
  public static Origin plan(String file, int line, int column) {
    return new Origin(Kind.PLAN, file, line, column);
  }

  /** A plan file as a whole. */
  public static Origin file(String file) {
    return new Origin(Kind.PLAN, file, 0, 0);
  }

  /** An option of the command line, or an argument of a library call. */
  public static Origin option(String option) {
    return new Origin(Kind.OPTION, option, 0, 0);
  }

  /** As shown to users, such as {@code truck.toml, line 12, column 1}. */
  public String words() {
    if (kind == Kind.DEFAULT) {
      return "default";
    }
    if (kind == Kind.OPTION) {
      return "option " + name;
    }
    if (kind == Kind.SOLVED) {
      return line == 0 ? "solved for " + name : "solved for " + name + ", line " + line + ", column " + column;
    }
    return line == 0 ? name : name + ", line " + line + ", column " + column;
  }
}
