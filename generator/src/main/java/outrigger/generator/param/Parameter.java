package outrigger.generator.param;

import java.util.List;
import outrigger.presets.Item;
import outrigger.presets.LengthText;

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

  /** Whether its numbers carry a unit, those of a list included. */
  public boolean hasUnit() {
    return unit != Unit.NONE && (numeric(form) || form instanceof ListForm list && numeric(list.element()));
  }

  private static boolean numeric(Form form) {
    return form instanceof NumberForm;
  }

  /** The words to choose from; empty unless it is a choice. */
  public List<String> choices() {
    return form instanceof ChoiceForm choice ? choice.words() : List.of();
  }

  /** Whether its values are names of presets of a type. */
  public boolean isPresetOf(Class<? extends Item> type) {
    return form instanceof PresetForm preset && preset.table() == type;
  }

  /** Its default with the unit, for help and pages. */
  public String defaultWords() {
    if (def.isEmpty()) {
      return "none";
    }
    return form instanceof NumberForm && LengthText.parseNumber(def).isNumber()
        ? Texts.number(Double.parseDouble(def), unit) : def;
  }
}
