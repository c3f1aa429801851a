package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Parameter;

/**
 * The values a plan gives one parameter: one, or several that each make a part.
 *
 * @param key the parameter
 * @param several whether it was given as a list of values
 * @param values at least one
 */
record Variants(String key, boolean several, List<Given> values) {
  Variants {
    values = List.copyOf(values);
  }

  /** Reads what a plan gives; a fault where it is of no type a parameter takes. */
  static Optional<Variants> read(Parameter parameter, Object value, Origin where, String file, List<Fault> faults) {
    int before = faults.size();
    Variants variants = value instanceof TomlArray array ? ofArray(parameter, array, where, file, faults)
        : new Variants(parameter.key(), false, single(parameter.key(), value, where, faults));
    return faults.size() > before ? Optional.empty() : Optional.of(variants);
  }

  private static Variants ofArray(Parameter parameter, TomlArray array, Origin where, String file,
      List<Fault> faults) {
    String key = parameter.key();
    boolean nested = !array.isEmpty() && array.get(0) instanceof TomlArray;
    if (parameter.isList() && !nested) {
      return new Variants(key, false, List.of(list(key, array, where, file, faults)));
    }
    if (array.isEmpty()) {
      faults.add(fault(key, key + " is an empty list (" + where.words() + "), so that no part would be made",
          "Give at least one value or leave it out.", where));
    }
    List<Given> values = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      Origin place = TomlText.place(file, array, i);
      if (parameter.isList() && array.get(i) instanceof TomlArray inner) {
        values.add(list(key, inner, place, file, faults));
      } else {
        values.addAll(single(key, array.get(i), place, faults));
      }
    }
    return new Variants(key, true, values);
  }

  private static Given list(String key, TomlArray array, Origin where, String file, List<Fault> faults) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      single(key, array.get(i), TomlText.place(file, array, i), faults).forEach(given -> texts.add(given.text()));
    }
    return Given.list(texts, where);
  }

  private static List<Given> single(String key, Object value, Origin where, List<Fault> faults) {
    Optional<String> text = TomlText.text(value);
    if (text.isEmpty()) {
      faults.add(fault(key, key + " is " + TomlText.noun(value) + " (" + where.words() + "), which it cannot be",
          "Give a number, a text in quotes, true or false.", where));
    }
    return text.map(t -> List.of(Given.of(t, where))).orElse(List.of());
  }

  private static Fault fault(String key, String what, String advice, Origin where) {
    return new Fault("", key, what, "", "", advice, where);
  }
}
