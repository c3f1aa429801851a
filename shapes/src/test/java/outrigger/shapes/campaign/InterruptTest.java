package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** A long evaluation stops soon after its thread is interrupted, whatever it is at. */
class InterruptTest {
  private static final long SECOND = 1_000_000_000L;
  private static final ThreadMXBean TIMES = ManagementFactory.getThreadMXBean();

  private static Solid heap() {
    Random random = new Random(5);
    List<Solid> balls = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      balls.add(Revolution.sphere(8, 64).turn(Axis.X, 360 * random.nextDouble())
          .move(20 * random.nextDouble(), 20 * random.nextDouble(), 20 * random.nextDouble()));
    }
    return Solid.union(balls);
  }

  /** In the threads' own processor time, as a shared machine's clock says little. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void mesh_interruptedAtAnyTime_stopsWithinASecond(int threads) throws Exception {
    for (int wait = 50; wait <= 3200; wait *= 4) {
      AtomicLong ended = new AtomicLong();
      boolean[] cancelled = new boolean[1];
      Thread caller = new Thread(() -> {
        try {
          Mesher.mesh(heap(), mesh -> false, Workers.of(threads));
        } catch (CancellationException e) {
          cancelled[0] = true;
        }
        ended.set(TIMES.getCurrentThreadCpuTime());
      });
      caller.start();
      Thread.sleep(wait);
      long before = TIMES.getThreadCpuTime(caller.getId());
      long workersBefore = workersTime();
      caller.interrupt();
      caller.join();
      assertTrue(cancelled[0], "the heap was done within " + wait + " ms: make it larger");
      assertTrue(ended.get() - before < SECOND, "it ran on for " + (ended.get() - before) / 1e9 + " s");
      while (workers().anyMatch(w -> w.getState() == Thread.State.RUNNABLE)) {
        long more = workersTime() - workersBefore;
        assertTrue(more < SECOND * threads, "its threads ran on for " + more / 1e9 + " s");
        Thread.sleep(10);
      }
    }
  }

  private static Stream<Thread> workers() {
    return Thread.getAllStackTraces().keySet().stream().filter(t -> t.getName().equals("outrigger-worker"));
  }

  private static long workersTime() {
    return workers().mapToLong(w -> Math.max(0, TIMES.getThreadCpuTime(w.getId()))).sum();
  }
}
