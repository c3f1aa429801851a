package outrigger.shapes.num;

import java.util.concurrent.CancellationException;

/** Lets long work be stopped by interrupting its thread. */
public final class Interrupt {
  private Interrupt() {}

  /**
   * Stops here if the thread was interrupted; the interrupt stays set.
   *
   * @throws CancellationException if so
   */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while a part was being worked on");
    }
  }
}
