package outrigger.generator.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.InputException;
import outrigger.generator.run.UnprintableException;
import outrigger.generator.run.UnsoundException;

/** The program. */
public final class Main {
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
    Optional<Command> plain = PlainMake.read(kinds, args);
    return plain.isPresent() ? plain.get().run(console) : new Parser(kinds).execute(console, args);
  }
}
