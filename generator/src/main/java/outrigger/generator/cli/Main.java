package outrigger.generator.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.InputException;
import outrigger.generator.run.UnprintableException;
import outrigger.generator.run.UnsoundException;
import outrigger.generator.run.Version;
import picocli.CommandLine;

/** The program. */
public final class Main {
  private static final int WIDTH = 100;

  private final Kinds kinds;
  private final boolean terminal;

  Main(Kinds kinds, boolean terminal) {
    this.kinds = kinds;
    this.terminal = terminal;
  }

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out);
    PrintWriter err = new PrintWriter(System.err);
    int exit = new Main(Accessories.kinds(), System.console() != null).run(out, err, args);
    System.exit(exit);
  }

  /**
   * Runs one command, nobody watching.
   *
   * @return 0 done, 1 defect of the program, 2 bad input, 3 built or read but not sound or not printable, or no stack found
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return new Main(Accessories.kinds(), false).run(out, err, args);
  }

  int run(PrintWriter out, PrintWriter err, String... args) {
    Console console = new Console(out, err, List.of(args).contains("--json"), terminal);
    try {
      return execute(console, args);
    } catch (InputException e) {
      return Failures.badInput(console, e);
    } catch (UnsoundException e) {
      return Failures.unsound(console, e);
    } catch (UnprintableException e) {
      return Failures.unprintable(console, e);
    } catch (RuntimeException | Error e) {
      return Failures.defect(console, e);
    } finally {
      out.flush();
      err.flush();
    }
  }

  private int execute(Console console, String... args) {
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
