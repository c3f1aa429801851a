package outrigger.generator.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import picocli.CommandLine;

/** What is wrong with the arguments of a command, in the program's own words. */
final class Arguments {
  /** Where files go unless another folder is given. */
  static final String OUT = "out";

  private Arguments() {}

  /** A path given by an option or argument. */
  static Path path(String option, String text) {
    if (text.isBlank()) {
      throw noPath(option, text);
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw noPath(option, text);
    }
  }

  private static InputException noPath(String option, String text) {
    return new InputException(Fault.of("", Texts.quoted(text) + " (" + option + ") cannot be a path",
        "Give the path of a file or folder.", Origin.option(option)));
  }

  static InputException missing(String command, String what, String known) {
    return new InputException(Fault.of(command, what, "Give one of: " + known + ". For help: " + command + " --help.",
        Origin.option(command)));
  }

  /** The fault of arguments that could not be read. */
  static InputException refused(CommandLine.ParameterException e) {
    CommandLine line = e.getCommandLine();
    String command = line.getCommandSpec().qualifiedName();
    if (e instanceof CommandLine.UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(line, command, unmatched.getUnmatched().get(0));
    }
    if (e instanceof CommandLine.MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return absent(line, command, missing.getMissing().get(0));
    }
    if (e instanceof CommandLine.OverwrittenOptionException twice) {
      String option = name(twice.getOverwritten());
      return fault(command, option + " is given twice", "Leave one of them out.", option);
    }
    return fault(command, e.getMessage().replaceAll("\\.$", ""), "For help: " + command + " --help.", command);
  }

  private static InputException unmatched(CommandLine line, String command, String argument) {
    if (argument.startsWith("-")) {
      String option = argument.split("=", 2)[0];
      Collection<String> known = line.getCommandSpec().optionsMap().keySet().stream()
          .filter(name -> name.startsWith("--")).collect(Collectors.toCollection(TreeSet::new));
      return fault(command, "there is no option " + option, hint(option, known, command), option);
    }
    Collection<String> subcommands = line.getSubcommands().keySet();
    if (subcommands.isEmpty()) {
      return fault(command, "there is nothing to do with " + Texts.quoted(argument),
          "Options begin with two dashes; for help: " + command + " --help.", argument);
    }
    String noun = line.getCommandSpec().userObject() instanceof MakeCommand ? "kind" : "command";
    return fault(command, "there is no " + noun + " " + Texts.quoted(argument), NearMiss.advice(argument, subcommands),
        argument);
  }

  /** Compares without dashes, which say nothing about what was meant. */
  private static String hint(String option, Collection<String> known, String command) {
    List<String> names = known.stream().map(name -> name.replaceFirst("^-+", "")).toList();
    List<String> near = NearMiss.of(option.replaceFirst("^-+", ""), names).stream().map(name -> "--" + name).toList();
    return near.isEmpty() ? "For all options: " + command + " --help."
        : "Did you mean " + String.join(" or ", near) + "?";
  }

  private static InputException absent(CommandLine line, String command, CommandLine.Model.ArgSpec arg) {
    if (arg.isOption()) {
      return fault(command, name(arg) + " is given without a value",
          "Write it such as " + name(arg) + " " + arg.paramLabel() + ".", name(arg));
    }
    return fault(command, arg.paramLabel() + " is missing", "Write it such as " + command + " " + arg.paramLabel() + ".",
        arg.paramLabel());
  }

  private static String name(CommandLine.Model.ArgSpec arg) {
    return arg instanceof CommandLine.Model.OptionSpec option ? option.longestName() : arg.paramLabel();
  }

  private static InputException fault(String command, String what, String advice, String where) {
    return new InputException(Fault.of(command, what, advice, Origin.option(where)));
  }
}
