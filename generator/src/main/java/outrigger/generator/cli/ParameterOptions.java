package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.doc.ParameterWords;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Options of a command as a record declares them, and texts given for these and others. */
final class ParameterOptions<R extends Record> {
  private final CommandSpec spec;
  private final ParamSpec<R> parameters;
  private final String argument;
  private final Map<String, List<String>> given = new LinkedHashMap<>();

  /** Adds an option for each parameter to a command. */
  ParameterOptions(CommandSpec spec, Class<R> type) {
    this(spec, type, "");
  }

  /**
   * Adds an option for each parameter to a command.
   *
   * @param argument key of the one parameter that is no option but must stand on its own, or empty
   */
  ParameterOptions(CommandSpec spec, Class<R> type, String argument) {
    this.spec = spec;
    this.parameters = ParamSpec.of(type);
    this.argument = argument;
    for (Parameter parameter : parameters.parameters()) {
      if (parameter.key().equals(argument)) {
        addArgument(name(parameter), parameter.help() + " (" + ParameterWords.allowed(parameter) + ")");
      } else {
        add(name(parameter), parameter.form().placeholder(),
            parameter.help() + " (" + ParameterWords.inHelp(parameter) + ")");
      }
    }
  }

  private String name(Parameter parameter) {
    return parameter.key().equals(argument) ? argument.toUpperCase(Locale.ROOT) : "--" + parameter.key();
  }

  private void addArgument(String label, String description) {
    spec.addPositional(PositionalParamSpec.builder().index("0").required(true).paramLabel(label).type(String.class)
        .arity("1").description(description.replace("%", "%%")).setter(taking(label)).build());
  }

  /** Adds one more option that takes a text. */
  void add(String name, String label, String description) {
    spec.addOption(OptionSpec.builder(name).paramLabel(label).type(String.class).arity("1")
        .description(description.replace("%", "%%")).setter(taking(name)).build());
  }

  private CommandLine.Model.ISetter taking(String name) {
    return new CommandLine.Model.ISetter() {
      @Override
      @SuppressWarnings("unchecked")
      public <T> T set(T value) {
        if (value == null) {
          given.remove(name);
        } else {
          given.computeIfAbsent(name, n -> new ArrayList<>()).add((String) value);
        }
        return null;
      }
    };
  }

  /** What was given for an option. */
  Optional<String> text(String option) {
    return Optional.ofNullable(given.get(option)).map(texts -> texts.get(texts.size() - 1));
  }

  /** What was given for the parameters. */
  ParamValues<R> values() {
    ParamValues<R> values = ParamValues.of(parameters);
    for (Parameter parameter : parameters.parameters()) {
      String option = name(parameter);
      Optional<String> text = text(option);
      if (text.isPresent()) {
        values = values.with(parameter.key(), Given.of(text.get(), Origin.option(option)));
      }
    }
    return values;
  }
}
