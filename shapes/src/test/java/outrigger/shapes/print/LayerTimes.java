package outrigger.shapes.print;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.hang.OverhangGauge;
import outrigger.shapes.print.stand.StandingGauge;
import outrigger.shapes.stl.StlException;
import outrigger.shapes.stl.StlReader;
import outrigger.shapes.stl.StlWriter;

/**
 * Times what looks layer by layer against reading, welding and proving the same bytes. Not a test:
 * {@code java -cp shapes/target/classes:shapes/target/test-classes outrigger.shapes.print.LayerTimes [WORKERS [SIDES...]]}
 */
final class LayerTimes {
  private LayerTimes() {}

  /** A bumpy ring about Z lying over the bed: undersides at every lean, facets of about one size. */
  private static Mesh ring(int facets) {
    int m = (int) Math.round(Math.sqrt(facets / 6.0));
    int n = 3 * m;
    int[] xyz = new int[3 * n * m];
    int[] corners = new int[6 * n * m];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < m; j++) {
        double a = 2 * Math.PI * i / n;
        double b = 2 * Math.PI * j / m;
        double small = 12 + 0.8 * StrictMath.sin(9 * a) * StrictMath.sin(5 * b);
        double r = 30 + small * StrictMath.cos(b);
        int v = 3 * (i * m + j);
        xyz[v] = (int) Math.rint(16384 * r * StrictMath.cos(a));
        xyz[v + 1] = (int) Math.rint(16384 * r * StrictMath.sin(a));
        xyz[v + 2] = (int) Math.rint(16384 * (14 + small * StrictMath.sin(b)));
        int p = (i + 1) % n * m + j;
        int q = i * m + (j + 1) % m;
        int s = (i + 1) % n * m + (j + 1) % m;
        System.arraycopy(new int[] {i * m + j, p, s, i * m + j, s, q}, 0, corners, 2 * v, 6);
      }
    }
    return Mesh.of(xyz, corners);
  }

  /** An upright post with as many sides. */
  private static Mesh post(int facets) {
    int n = facets / 4;
    int[] xyz = new int[6 * n + 6];
    List<Integer> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 2; k++) {
        xyz[6 * i + 3 * k] = (int) Math.rint(16384 * 100 * StrictMath.cos(2 * Math.PI * i / n));
        xyz[6 * i + 3 * k + 1] = (int) Math.rint(16384 * 100 * StrictMath.sin(2 * Math.PI * i / n));
        xyz[6 * i + 3 * k + 2] = k * 30 * 16384;
      }
      int j = (i + 1) % n;
      corners.addAll(List.of(2 * i, 2 * j, 2 * j + 1, 2 * i, 2 * j + 1, 2 * i + 1, 2 * n, 2 * j, 2 * i, 2 * n + 1,
          2 * i + 1, 2 * j + 1));
    }
    xyz[6 * n + 5] = 30 * 16384;
    return Mesh.of(xyz, corners.stream().mapToInt(c -> c).toArray());
  }

  public static void main(String[] args) throws IOException, StlException {
    int workers = args.length > 0 ? Integer.parseInt(args[0]) : 2;
    int[] sizes = args.length > 1 ? Arrays.stream(args).skip(1).mapToInt(Integer::parseInt).toArray()
        : new int[] {1_000, 10_000, 100_000, 1_000_000};
    Map<String, IntFunction<Mesh>> shapes = Map.of("ring", LayerTimes::ring, "post", LayerTimes::post);
    for (String shape : List.of("ring", "post")) {
      for (int facets : sizes) {
        time(shape, shapes.get(shape).apply(facets), workers);
      }
    }
  }

  private static void time(String shape, Mesh mesh, int workers) throws IOException, StlException {
    Path file = Files.createTempFile("layer-times", ".stl");
    Files.write(file, StlWriter.bytes(Proof.judge(mesh).proven().orElseThrow(), shape));
    int runs = mesh.facetCount() > 300_000 ? 3 : 15;
    double[][] ms = new double[3][runs];
    int found = 0;
    for (int i = 0; i < runs; i++) {
      long a = now(workers);
      CheckedMesh proven = Proof.judge(StlReader.read(file).toMesh().mesh()).proven().orElseThrow();
      long b = now(workers);
      Specimen specimen = new Specimen(proven, PrintLimits.standard(), Map.of(), Workers.of(workers));
      found = new OverhangGauge().read(specimen).concerns().size();
      long c = now(workers);
      new StandingGauge().read(specimen);
      long d = now(workers);
      ms[0][i] = (b - a) / 1e6;
      ms[1][i] = (c - b) / 1e6;
      ms[2][i] = (d - c) / 1e6;
    }
    Files.delete(file);
    System.out.printf(Locale.ROOT,
        "{\"shape\":\"%s\",\"facets\":%d,\"read_weld_prove_ms\":%.1f,\"overhang_ms\":%.1f,\"standing_ms\":%.1f,"
            + "\"ratio\":%.2f,\"first_ratio\":%.2f,\"concerns\":%d}%n", shape, mesh.facetCount(), median(ms[0]),
        median(ms[1]), median(ms[2]), (median(ms[1]) + median(ms[2])) / median(ms[0]), ms[1][0] / ms[0][0], found);
  }

  /** With one worker the thread's own time, which other work on the machine does not lengthen; else the clock's. */
  private static long now(int workers) {
    return workers == 1 ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() : System.nanoTime();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
