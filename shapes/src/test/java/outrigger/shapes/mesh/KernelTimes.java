package outrigger.shapes.mesh;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Workers;
import outrigger.shapes.stl.StlWriter;

/**
 * Times the reference parts: numbers to operands, Booleans, rounding, proof and STL bytes in memory, on one thread or on
 * {@code -Dthreads} of them, by the clock and by the processor's time for the calling thread, which is the one to compare
 * on a loaded machine where it is the only one. Not a test:
 * {@code java -cp shapes/target/classes:shapes/target/test-classes outrigger.shapes.mesh.KernelTimes [FILE.ops...]}.
 * Parts to which the planar way applies are timed by both. Each runs for {@code -Dms}, 25 s if that is not given, since much
 * is called but once an evaluation and fully compiled only after thousands of them.
 */
final class KernelTimes {
  private static final Workers WORKERS = Workers.of(Integer.getInteger("threads", 1));
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final String[] PARTS = {"spacer", "tower", "tray", "random-prisms"};

  private KernelTimes() {}

  public static void main(String[] args) throws IOException {
    for (String name : args.length > 0 ? args : PARTS) {
      ReferencePart part = name.endsWith(".ops") ? ReferencePart.of(Files.readString(Path.of(name)))
          : ReferencePart.named(name);
      time(name, "spatial", () -> part, p -> Proof.of(isSound -> p.mesh(isSound, WORKERS), WORKERS));
      if (part.isPlanar()) {
        time(name, "planar", part::planarMesh, Proof::judge);
      }
    }
  }

  private static <M> void time(String name, String way, Supplier<M> part, Function<M, Proof.Verdict> proof) {
    long until = System.nanoTime() + Long.getLong("ms", 25_000) * 1_000_000L;
    double[] mesh = new double[10_000];
    double[] all = new double[10_000];
    double[] processor = new double[10_000];
    int n = 0;
    int warmUp = 10;
    int facets = 0;
    while (n < 15 + warmUp || System.nanoTime() < until && n < mesh.length) {
      long busy = THREADS.getCurrentThreadCpuTime();
      long start = System.nanoTime();
      M result = part.get();
      long meshed = System.nanoTime();
      byte[] bytes = StlWriter.bytes(proof.apply(result).proven().orElseThrow(), name, WORKERS);
      all[n] = (System.nanoTime() - start) / 1e6;
      processor[n] = (THREADS.getCurrentThreadCpuTime() - busy) / 1e6;
      mesh[n++] = (meshed - start) / 1e6;
      facets = (bytes.length - 84) / 50;
    }
    // the second half of the runs: compiled by then
    System.out.printf(Locale.ROOT, "{\"part\":\"%s\",\"way\":\"%s\",\"runs\":%d,\"total_ms\":%.3f,\"mesh_ms\":%.3f,"
        + "\"processor_ms\":%.3f,\"least_ms\":%.3f,\"facets\":%d}%n", name, way, n - n / 2, median(Arrays.copyOfRange(all, n / 2, n)),
        median(Arrays.copyOfRange(mesh, n / 2, n)), median(Arrays.copyOfRange(processor, n / 2, n)),
        Arrays.stream(processor, n / 2, n).min().orElseThrow(), facets);
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
