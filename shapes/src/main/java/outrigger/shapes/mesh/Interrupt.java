package outrigger.shapes.mesh;

import java.util.concurrent.CancellationException;

/** Lets a long evaluation be stopped by interrupting its thread. */
final class Interrupt {
  private Interrupt() {}

  /**
   * Stops here if the thread was interrupted; the interrupt stays set.
   *
   * @throws CancellationException if so
   */
  static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while a solid was being evaluated");
    }
  }
}
