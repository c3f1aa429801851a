package outrigger.generator.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;

/** Names of parts, which become names of files on any system. */
public final class Names {
  /** Longest name of a part, characters. */
  public static final int LONGEST = 100;

  /** Names that stand for devices on some systems, whatever follows a point. */
  private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul", "com0", "com1", "com2", "com3",
      "com4", "com5", "com6", "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7",
      "lpt8", "lpt9");

  private Names() {}

  /** What is wrong with a name, if anything. */
  public static Optional<Fault> fault(String name, Origin where) {
    String is = "the name " + Texts.quoted(name) + " (" + where.words() + ") ";
    if (name.length() > LONGEST) {
      return refused(name, is + "has " + name.length() + " characters, above the maximum of " + LONGEST,
          "Shorten it.", where);
    }
    if (!isAllowed(name)) {
      return refused(name, is + "cannot be a file name everywhere",
          "Use letters a to z, digits, dashes, points between them; begin and end with a letter or digit.", where);
    }
    if (RESERVED.contains(name.toLowerCase(Locale.ROOT).split("\\.", 2)[0])) {
      return refused(name, is + "is reserved on some systems", "Choose another name.", where);
    }
    return Optional.empty();
  }

  /** Whether it is of letters and digits without accents, points, lines and dashes, a letter or digit at either end. */
  private static boolean isAllowed(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
      if (!plain && (i == 0 || i == name.length() - 1 || "._-".indexOf(c) < 0)) {
        return false;
      }
    }
    return !name.isEmpty();
  }

  private static Optional<Fault> refused(String name, String what, String advice, Origin where) {
    return Optional.of(new Fault("", "name", what, name, "a portable file name", advice, where));
  }

  /** A value as part of a name: what a file name cannot hold becomes a dash. */
  static String slug(String text) {
    return text.replaceAll("[^A-Za-z0-9.-]+", "-").replaceAll("^[-.]+(?=[A-Za-z])|[-.]+$", "");
  }
}
