package outrigger.generator.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import outrigger.generator.accessory.Kinds;

/** What a run of the program did. */
record Run(int exit, String out, String err) {

  /** Runs with the test's own kind of part. */
  static Run hook(String... args) {
    return of(Hook.KINDS, args);
  }

  static Run of(Kinds kinds, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit = new Main(kinds, false).run(new PrintWriter(out), new PrintWriter(err), args);
    return new Run(exit, out.toString(), err.toString());
  }

  /** What was printed, less what the gauges of printing found, which has tests of its own. */
  String outWithoutPrinting() {
    return out.replaceAll("(?m)^  printing: .*\n(    .*\n)*", "").replaceAll("(?m)  (printing|no concern|\\d+ caution.*)$", "")
        .replaceAll("(?m)^\\S+:\n(  caution .*\n)+", "");
  }
}
