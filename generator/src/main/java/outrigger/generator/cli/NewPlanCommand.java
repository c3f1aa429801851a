package outrigger.generator.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import outrigger.generator.doc.NewPlan;
import outrigger.generator.doc.ParameterWords;
import outrigger.generator.doc.PlanStarter;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Parameter;
import outrigger.generator.run.Workshop;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code plan new}: a starting plan from options, or from answers to questions. */
final class NewPlanCommand implements Command {
  private static final String SUBJECT = "plan new";
  private static final String FILE = "--file";
  private static final String DEFAULT_FILE = "truck.toml";

  private final Root root;
  private final CommandSpec spec;
  private final ParameterOptions<NewPlan> options;
  private final OptionSpec ask;

  private NewPlanCommand(Root root) {
    this.root = root;
    this.spec = CommandSpec.wrapWithoutInspection(this);
    spec.usageMessage().header("Write a starting plan, commented and valid as it stands.").sortOptions(false)
        .abbreviateSynopsis(true);
    this.options = new ParameterOptions<>(spec, NewPlan.class);
    options.add(FILE, "FILE", "Where to write it; a file that is there already stays. (default " + DEFAULT_FILE + ")");
    this.ask = OptionSpec.builder("--ask").type(boolean.class).arity("0")
        .description("Ask for each value not given as an option; an empty answer takes the default.").build();
    spec.addOption(ask);
  }

  static CommandSpec spec(Root root) {
    return new NewPlanCommand(root).spec;
  }

  @Override
  public int run(Console console) {
    Path file = Arguments.path(FILE, options.text(FILE).orElse(DEFAULT_FILE)).toAbsolutePath();
    if (Files.exists(file)) {
      throw new InputException(Fault.of(SUBJECT, "there is a file " + file.getFileName() + " already", "Give another name "
          + "with " + FILE + ".", Origin.option(FILE)));
    }
    boolean isAsked = Boolean.TRUE.equals(ask.getValue());
    ParamValues<NewPlan> values = isAsked ? asked(console, options.values()) : options.values();
    NewPlan plan = values.resolve(SUBJECT, root.shelf()).record();
    Workshop.writeTexts(Map.of(file.getFileName().toString(), PlanStarter.text(plan)), file.getParent());
    if (console.json()) {
      console.json(Exit.DONE, json -> json.put("file", file.getFileName().toString()));
    } else {
      console.line(file.getFileName() + " written. Change what differs on your truck, then: outrigger batch "
          + file.getFileName());
    }
    return Exit.DONE;
  }

  private ParamValues<NewPlan> asked(Console console, ParamValues<NewPlan> given) {
    given.resolve(SUBJECT, root.shelf());
    ParamValues<NewPlan> values = given;
    BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (Parameter parameter : given.spec().parameters()) {
      if (given.given(parameter.key()).origin().kind() == Origin.Kind.DEFAULT) {
        values = answered(console, in, parameter, values);
      }
    }
    console.err().print("\n");
    return values;
  }

  /** Asks until an answer will do, is empty or there is none. */
  private ParamValues<NewPlan> answered(Console console, BufferedReader in, Parameter parameter, ParamValues<NewPlan> values) {
    while (true) {
      console.err().print(parameter.help() + " (" + String.join("|", parameter.choices())
          + (parameter.choices().isEmpty() ? "" : "; ") + ParameterWords.inHelp(parameter) + ") ");
      console.err().flush();
      String answer = line(in);
      if (answer.isBlank()) {
        return values;
      }
      ParamValues<NewPlan> with = values.with(parameter.key(),
          Given.of(answer.strip(), Origin.option("answer to " + parameter.key())));
      List<Fault> faults = faults(with, parameter);
      if (faults.isEmpty()) {
        return with;
      }
      faults.forEach(fault -> console.err().print(fault.message() + "\n"));
    }
  }

  /** What is wrong with one value; what does not suit others is told when all are there. */
  private List<Fault> faults(ParamValues<NewPlan> values, Parameter parameter) {
    try {
      values.resolve(SUBJECT, root.shelf());
      return List.of();
    } catch (InputException e) {
      return e.faults().stream().filter(fault -> fault.parameter().equals(parameter.key())).toList();
    }
  }

  private static String line(BufferedReader in) {
    try {
      String line = in.readLine();
      return line == null ? "" : line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
