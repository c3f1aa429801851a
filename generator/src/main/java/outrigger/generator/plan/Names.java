package outrigger.generator.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;

/** Names of parts, which become names of files on any system. */
public final class Names {
  /** Longest name of a part, characters. */
  public static final int LONGEST = 100;

  private static final Pattern ALLOWED = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9._-]*[A-Za-z0-9])?");
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
    if (!ALLOWED.matcher(name).matches()) {
      return refused(name, is + "cannot be a file name everywhere",
          "Use letters a to z, digits, dashes, points between them; begin and end with a letter or digit.", where);
    }
    if (RESERVED.contains(name.toLowerCase(Locale.ROOT).split("\\.", 2)[0])) {
      return refused(name, is + "is reserved on some systems", "Choose another name.", where);
    }
    return Optional.empty();
  }

  private static Optional<Fault> refused(String name, String what, String advice, Origin where) {
    return Optional.of(new Fault("", "name", what, name, "a portable file name", advice, where));
  }

  /** A value as part of a name: what a file name cannot hold becomes a dash. */
  static String slug(String text) {
    return text.replaceAll("[^A-Za-z0-9.-]+", "-").replaceAll("^[-.]+(?=[A-Za-z])|[-.]+$", "");
  }
}
