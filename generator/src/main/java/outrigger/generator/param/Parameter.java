package outrigger.generator.param;

/**
 * One declared parameter.
 *
 * @param key its name for users, such as {@code wall-thickness}
 * @param unit unit of its numbers
 * @param min least number
 * @param max greatest number
 * @param def its default, as text
 * @param help what it is, one sentence
 * @param form how its values are written
 */
public record Parameter(String key, Unit unit, double min, double max, String def, String help, Form form) {

  /** Whether it takes a list as one value. */
  public boolean isList() {
    return form instanceof ListForm;
  }

  /** Whether its least and greatest value mean something. */
  public boolean isNumber() {
    return form instanceof NumberForm || form instanceof CountForm;
  }

  /** Its default with the unit, for help and pages. */
  public String defaultWords() {
    return def.isEmpty() ? "none" : form instanceof NumberForm && unit == Unit.MM && def.matches("[0-9.]+")
        ? def + " mm" : def;
  }
}
