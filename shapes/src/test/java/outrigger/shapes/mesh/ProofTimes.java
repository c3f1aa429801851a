package outrigger.shapes.mesh;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.check.Meshes;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Soup;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;
import outrigger.shapes.stl.StlWriter;

/**
 * Times the proof and the STL bytes of finished meshes, as processor time of their one thread. Not a test: {@code java -cp
 * shapes/target/classes:shapes/target/test-classes:JTS.jar outrigger.shapes.mesh.ProofTimes NAME...}, where a name is a
 * file {@code .ops}, a reference part, {@code ball:TIMES}, {@code cone:CORNERS}, {@code spindle:CORNERS},
 * {@code holes:ACROSS} or {@code pins:ACROSS}.
 */
final class ProofTimes {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final long NANOS = 4_000_000_000L;

  private ProofTimes() {}

  public static void main(String[] args) throws IOException {
    for (String name : args) {
      time(name, mesh(name));
    }
  }

  private static Mesh mesh(String name) throws IOException {
    if (name.endsWith(".ops")) {
      return ReferencePart.of(Files.readString(Path.of(name))).mesh();
    }
    if (!name.contains(":")) {
      return ReferencePart.named(name).mesh();
    }
    int n = Integer.parseInt(name.substring(name.indexOf(':') + 1));
    return switch (name.substring(0, name.indexOf(':'))) {
      case "ball" -> Meshes.ball(n, 500 * Meshes.MM).mesh();
      case "cone" -> Meshes.cone(n, 500 * Meshes.MM, 300 * Meshes.MM).mesh();
      case "spindle" -> spindle(n).mesh();
      case "holes" -> Mesher.mesh(plate(n, false));
      case "pins" -> Mesher.mesh(plate(n, true));
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** A plate of 2 mm with so many round holes across and along, in a grid, and a loose pin in each if wanted. */
  private static Solid plate(int across, boolean pins) {
    double pitch = 1000.0 / (across + 1);
    Profile[] holes = new Profile[across * across];
    Solid[] parts = new Solid[pins ? holes.length + 1 : 1];
    for (int i = 0; i < holes.length; i++) {
      double x = (i % across - (across - 1) / 2.0) * pitch;
      double y = (i / across - (across - 1) / 2.0) * pitch;
      holes[i] = Profile.hole(pitch / 2, pitch / 100).move(x, y);
      if (pins) {
        parts[i + 1] = Prism.of(Profile.post(pitch / 3, pitch / 100).move(x, y), -1, 3);
      }
    }
    parts[0] = Prism.of(Profile.rectangle(1000, 1000).cut(holes), 0, 2);
    return new Union(List.of(parts));
  }

  /** Two cones base to base: needles on both sides of one rim. */
  private static Soup spindle(int n) {
    int[][] loop = Meshes.circle(n, 500 * Meshes.MM, 0);
    Soup soup = new Soup();
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      soup.facet(loop[i], loop[j], new int[] {0, 0, 300 * Meshes.MM});
      soup.facet(loop[j], loop[i], new int[] {0, 0, -300 * Meshes.MM});
    }
    return soup;
  }

  private static void time(String name, Mesh mesh) {
    double[] proof = new double[10_000];
    double[] bytes = new double[10_000];
    long until = System.nanoTime() + NANOS;
    int n = 0;
    while (n < 4 || System.nanoTime() < until && n < proof.length) {
      long start = THREADS.getCurrentThreadCpuTime();
      var checked = Proof.judge(mesh).proven().orElseThrow();
      long proven = THREADS.getCurrentThreadCpuTime();
      StlWriter.bytes(checked, name);
      bytes[n] = (THREADS.getCurrentThreadCpuTime() - proven) / 1e6;
      proof[n++] = (proven - start) / 1e6;
    }
    // the second half of the runs: compiled by then
    System.out.printf(Locale.ROOT, "{\"mesh\":\"%s\",\"facets\":%d,\"proof_ms\":%.3f,\"bytes_ms\":%.3f}%n", name,
        mesh.facetCount(), median(Arrays.copyOfRange(proof, n / 2, n)), median(Arrays.copyOfRange(bytes, n / 2, n)));
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
