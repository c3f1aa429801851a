package outrigger.generator.cli;

import java.util.Locale;
import java.util.Optional;
import outrigger.generator.doc.ParameterWords;
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
  private final OptionTexts given;

  /** Adds an option for each parameter to a command. */
  ParameterOptions(CommandSpec spec, Class<R> type) {
    this(spec, ParamSpec.of(type), "", new OptionTexts());
  }

  /**
   * Adds an option for each parameter to a command.
   *
   * @param argument key of the one parameter that is no option but must stand on its own, or empty
   */
  ParameterOptions(CommandSpec spec, Class<R> type, String argument) {
    this(spec, ParamSpec.of(type), argument, new OptionTexts());
  }

  /**
   * Adds an option for each parameter to a command.
   *
   * @param given takes what is given
   */
  ParameterOptions(CommandSpec spec, ParamSpec<R> parameters, String argument, OptionTexts given) {
    this.spec = spec;
    this.parameters = parameters;
    this.argument = argument;
    this.given = given;
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
    return parameter.key().equals(argument) ? argument.toUpperCase(Locale.ROOT) : OptionTexts.option(parameter);
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
          given.forget(name);
        } else {
          given.add(name, (String) value);
        }
        return null;
      }
    };
  }

  /** What was given last for an option. */
  Optional<String> text(String option) {
    return given.last(option);
  }

  /** What was given for the parameters. */
  ParamValues<R> values() {
    ParamValues<R> values = ParamValues.of(parameters);
    for (Parameter parameter : parameters.parameters()) {
      values = given.with(values, parameter, name(parameter));
    }
    return values;
  }
}
