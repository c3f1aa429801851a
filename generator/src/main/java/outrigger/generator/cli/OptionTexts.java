package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;

/** Texts given for the options of a command, by the name of the option. */
final class OptionTexts {
  private final Map<String, List<String>> given = new LinkedHashMap<>();

  void add(String option, String text) {
    List<String> texts = given.get(option);
    if (texts == null) {
      texts = new ArrayList<>();
      given.put(option, texts);
    }
    texts.add(text);
  }

  void forget(String option) {
    given.remove(option);
  }

  boolean has(String option) {
    return given.containsKey(option);
  }

  /** Every text given for an option, in the order given. */
  List<String> all(String option) {
    return given.getOrDefault(option, List.of());
  }

  /** The text given last for an option. */
  Optional<String> last(String option) {
    List<String> texts = all(option);
    return texts.isEmpty() ? Optional.empty() : Optional.of(texts.get(texts.size() - 1));
  }

  /** The option of a parameter. */
  static String option(Parameter parameter) {
    return "--" + parameter.key();
  }

  /** What was given for the options of these parameters. */
  <R extends Record> ParamValues<R> values(ParamSpec<R> parameters) {
    ParamValues<R> values = ParamValues.of(parameters);
    for (Parameter parameter : parameters.parameters()) {
      values = with(values, parameter, option(parameter));
    }
    return values;
  }

  /** The same values with what was given for one parameter by an option or argument of this name. */
  <R extends Record> ParamValues<R> with(ParamValues<R> values, Parameter parameter, String name) {
    Optional<String> text = last(name);
    return text.isEmpty() ? values : values.with(parameter.key(), Given.of(text.get(), Origin.option(name)));
  }
}
