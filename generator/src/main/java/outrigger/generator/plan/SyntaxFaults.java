package outrigger.generator.plan;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlParseError;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;

/** What is wrong with a file as TOML, in a maker's words. */
final class SyntaxFaults {
  private static final Pattern REPEATED =
      Pattern.compile("(.+) previously defined at (line [0-9]+), (column [0-9]+)", Pattern.DOTALL);
  private static final Pattern BARE_WORD = Pattern.compile("Unexpected '[A-Za-z]+', expected a newline.*");
  private static final Pattern SHUT_TABLE = Pattern.compile("(.+) is not an array \\(previously defined.*");

  private SyntaxFaults() {}

  static List<Fault> of(String file, List<TomlParseError> errors) {
    return errors.stream().map(e -> fault(file, e)).toList();
  }

  /** Whether the rest of the file was read as it was meant, so that its other faults are worth telling. */
  static boolean leavesTheRest(TomlParseError error) {
    String message = String.valueOf(error.getMessage());
    return REPEATED.matcher(message).matches() || message.endsWith(" is too large");
  }

  private static Fault fault(String file, TomlParseError error) {
    Origin where = TomlText.place(file, error.position());
    String message = String.valueOf(error.getMessage());
    Matcher repeated = REPEATED.matcher(message);
    if (repeated.matches()) {
      return Fault.of("", Texts.quoted(repeated.group(1)) + " is given twice (" + where.words() + "; first at "
          + repeated.group(2) + ", " + repeated.group(3) + ")", "Leave one of them out.", where);
    }
    String told = message.isEmpty() ? message : Character.toLowerCase(message.charAt(0)) + message.substring(1);
    return Fault.of("", "the plan is not valid TOML (" + where.words() + "): " + told, advice(message), where);
  }

  private static String advice(String message) {
    if (BARE_WORD.matcher(message).matches()) {
      return "Put values with a unit, and other words, in quotes, such as \"0.25in\".";
    }
    if (message.endsWith(" is too large")) {
      return "Use a smaller number.";
    }
    return SHUT_TABLE.matcher(message).matches() ? "Begin each part with [[part]], brackets doubled."
        : "Write each line as key = value, texts in quotes, and begin each part with [[part]].";
  }
}
