package outrigger.generator.cli;

import java.io.PrintWriter;
import java.util.List;
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
    CommandLine line = commandLine();
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

  private CommandLine commandLine() {
    Root root = new Root();
    CommandLine line = new CommandLine(root);
    line.addSubcommand(MakeCommand.of(root, kinds));
    line.addSubcommand(new BatchCommand(root, kinds));
    line.addSubcommand(new HardwareCommand(root, kinds));
    line.addSubcommand(PlanCommand.of(root));
    line.addSubcommand(new CheckCommand(root));
    line.addSubcommand("hold", HoldCommand.spec(root));
    line.addSubcommand("stack", StackCommand.spec(root));
    line.addSubcommand(new PresetsCommand(root));
    line.addSubcommand(new KindsCommand(kinds));
    line.setUsageHelpWidth(WIDTH);
    line.setExpandAtFiles(false);
    return line;
  }

  private static void text(Console console, String name, String text) {
    if (console.json()) {
      console.json(Exit.DONE, json -> json.put(name, text.strip()));
    } else {
      console.out().print(text.stripTrailing().replace(System.lineSeparator(), "\n") + "\n");
    }
  }
}
