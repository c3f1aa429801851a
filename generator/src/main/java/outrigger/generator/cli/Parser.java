package outrigger.generator.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.run.Version;
import picocli.CommandLine;

/** Reads the arguments of every command by the option parser, and tells help. */
final class Parser {
  private static final int WIDTH = 100;

  private final Kinds kinds;

  Parser(Kinds kinds) {
    this.kinds = kinds;
  }

  /** Runs the command that the arguments name, or tells help. */
  int execute(Console console, String... args) {
    CommandLine line = commandLine(args);
    CommandLine.ParseResult result;
    try {
      result = line.parseArgs(args);
    } catch (CommandLine.ParameterException e) {
      throw Arguments.refused(e);
    }
    if (result.isVersionHelpRequested()) {
      text(console, "version", Version.words() + "\n");
      return Exit.DONE;
    }
    CommandLine.ParseResult last = result;
    while (last.hasSubcommand() && !last.isUsageHelpRequested()) {
      last = last.subcommand();
    }
    CommandLine chosen = last.commandSpec().commandLine();
    if (last.isUsageHelpRequested()) {
      text(console, "help", chosen.getUsageMessage(CommandLine.Help.Ansi.OFF));
      return Exit.DONE;
    }
    return ((Command) last.commandSpec().userObject()).run(console);
  }

  /** With the command alone whose name comes first: describing all to the parser takes longer than making a small part. */
  private CommandLine commandLine(String... args) {
    Root root = new Root();
    CommandLine line = new CommandLine(root);
    Map<String, Supplier<Object>> commands = commands(root, args);
    String first = args.length > 0 ? args[0] : "";
    commands.forEach((name, command) -> {
      if (name.equals(first) || !commands.containsKey(first)) {
        line.addSubcommand(name, command.get());
      }
    });
    line.setUsageHelpWidth(WIDTH);
    line.setExpandAtFiles(false);
    return line;
  }

  /** What makes each command, in the order users see them. */
  private Map<String, Supplier<Object>> commands(Root root, String... args) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("make", () -> MakeCommand.of(root, kinds, args.length > 1 ? args[1] : ""));
    commands.put("batch", () -> new BatchCommand(root, kinds));
    commands.put("hardware", () -> new HardwareCommand(root, kinds));
    commands.put("plan", () -> PlanCommand.of(root));
    commands.put("check", () -> new CheckCommand(root));
    commands.put("hold", () -> HoldCommand.spec(root));
    commands.put("stack", () -> StackCommand.spec(root));
    commands.put("presets", () -> new PresetsCommand(root));
    commands.put("kinds", () -> new KindsCommand(kinds));
    return commands;
  }

  private static void text(Console console, String name, String text) {
    if (console.json()) {
      console.json(Exit.DONE, json -> json.put(name, text.strip()));
    } else {
      console.out().print(text.stripTrailing().replace(System.lineSeparator(), "\n") + "\n");
    }
  }
}
