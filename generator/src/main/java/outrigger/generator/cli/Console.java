package outrigger.generator.cli;

import java.io.PrintWriter;
import outrigger.generator.run.Json;
import outrigger.generator.run.Progress;

/**
 * Where a command prints.
 *
 * @param out results
 * @param err faults
 * @param json whether the one thing printed to {@code out} is a JSON object
 * @param terminal whether somebody is watching
 */
record Console(PrintWriter out, PrintWriter err, boolean json, boolean terminal) {

  void line(String text) {
    out.print(text + "\n");
  }

  /** Prints an object that begins with whether all went well. */
  void json(int exit, Json.Body body) {
    out.print(Json.text(json -> {
      json.put("ok", exit == Exit.DONE).put("exit", exit);
      body.write(json);
    }));
  }

  /** A bar while somebody is watching. */
  Progress progress() {
    return terminal && !json ? new TerminalProgress() : Progress.NONE;
  }
}
