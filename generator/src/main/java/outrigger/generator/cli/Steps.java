package outrigger.generator.cli;

import outrigger.generator.run.Progress;
import outrigger.shapes.print.Printability;

/** The steps of checking one file: reading and proving it, then each gauge. */
final class Steps {
  static final int OF_A_FILE = 1 + Printability.count();

  private final Progress progress;
  private final String file;
  private int left = OF_A_FILE;

  Steps(Progress progress, String file) {
    this.progress = progress;
    this.file = file;
  }

  /** One step is done. */
  void done() {
    left--;
    progress.finished(file);
  }

  /** What is left is not done: the file cannot be read or is not sound. */
  void rest() {
    while (left > 0) {
      done();
    }
  }
}
