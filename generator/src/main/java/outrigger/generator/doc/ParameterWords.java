package outrigger.generator.doc;

import java.util.Optional;
import outrigger.generator.param.Parameter;
import outrigger.presets.Shelf;
import outrigger.presets.TableInfo;

/** A parameter in words: the same in help and on pages. */
public final class ParameterWords {
  private ParameterWords() {}

  /**
   * What help adds to a parameter's sentence, such as {@code 2 to 200 mm; default 24 mm}. The words of a choice are left
   * out, since they stand as its placeholder.
   */
  public static String inHelp(Parameter parameter) {
    boolean told = parameter.form().placeholder().contains("|");
    String allowed = told ? "" : allowed(parameter);
    return (allowed.isEmpty() ? "" : allowed + "; ") + "default " + parameter.defaultWords();
  }

  /** What is allowed, such as {@code 2 to 200 mm}, or where the names of presets are found. */
  public static String allowed(Parameter parameter) {
    return table(parameter).map(table -> "a name of the table " + table.key()).orElse(parameter.form().allowed());
  }

  /** The table a parameter's values are names of. */
  static Optional<TableInfo> table(Parameter parameter) {
    return Shelf.standard().tables().stream().filter(table -> parameter.isPresetOf(table.type())).findFirst();
  }
}
