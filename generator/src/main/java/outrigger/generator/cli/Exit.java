package outrigger.generator.cli;

/** Exit codes. */
final class Exit {
  /** Done. */
  static final int DONE = 0;
  /** A defect of the program. */
  static final int DEFECT = 1;
  /** Bad input; nothing is written. */
  static final int BAD_INPUT = 2;
  /**
   * Built or read, but the proof found faults, it will not print as drawn or it clashes on the truck; nothing is written.
   */
  static final int UNSOUND = 3;
  /** Well asked, and the answer is that there is none; the same code as of what did not pass. */
  static final int NONE_FOUND = 3;

  private Exit() {}
}
