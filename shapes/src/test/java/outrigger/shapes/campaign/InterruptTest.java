package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** A long evaluation stops soon after its thread is interrupted, whatever it is at. */
class InterruptTest {
  private static final long SECOND = 1_000_000_000L;

  private static Solid heap() {
    Random random = new Random(5);
    List<Solid> balls = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      balls.add(Revolution.sphere(8, 64).turn(Axis.X, 360 * random.nextDouble())
          .move(20 * random.nextDouble(), 20 * random.nextDouble(), 20 * random.nextDouble()));
    }
    return Solid.union(balls);
  }

  /** In the thread's own processor time, as a shared machine's clock says little. */
  @Test
  void mesh_interruptedAtAnyTime_stopsWithinASecond() throws Exception {
    for (int wait = 50; wait <= 3200; wait *= 4) {
      AtomicLong ended = new AtomicLong();
      boolean[] cancelled = new boolean[1];
      Thread worker = new Thread(() -> {
        try {
          Mesher.mesh(heap());
        } catch (CancellationException e) {
          cancelled[0] = true;
        }
        ended.set(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime());
      });
      worker.start();
      Thread.sleep(wait);
      long before = ManagementFactory.getThreadMXBean().getThreadCpuTime(worker.getId());
      worker.interrupt();
      worker.join();
      assertTrue(cancelled[0], "the heap was done within " + wait + " ms: make it larger");
      assertTrue(ended.get() - before < SECOND, "it ran on for " + (ended.get() - before) / 1e9 + " s");
    }
  }
}
