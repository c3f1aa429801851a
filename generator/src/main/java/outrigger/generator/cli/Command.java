package outrigger.generator.cli;

/** What a command does once its arguments are read. */
interface Command {
  /**
   * Does it.
   *
   * @return the exit code
   * @throws outrigger.generator.param.InputException for bad input
   * @throws outrigger.generator.run.UnsoundException if a part did not pass its proof
   */
  int run(Console console);
}
