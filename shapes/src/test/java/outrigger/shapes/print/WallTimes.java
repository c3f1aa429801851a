package outrigger.shapes.print;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Meshes;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Soup;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.wall.GapGauge;
import outrigger.shapes.print.wall.WallGauge;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.stl.StlException;
import outrigger.shapes.stl.StlReader;
import outrigger.shapes.stl.StlWriter;

/**
 * Processor time, on one thread, of the gauges of walls and gaps against reading, welding and proving the same part. Not a
 * test: {@code java -cp shapes/target/classes:shapes/target/test-classes:JTS outrigger.shapes.print.WallTimes [NAME]}
 */
final class WallTimes {
  private WallTimes() {}

  public static void main(String[] args) throws IOException, StlException {
    String only = args.length > 0 ? args[0] : "";
    Map<String, Supplier<Mesh>> parts = new LinkedHashMap<>();
    for (int times = 3; times <= 8; times++) {
      int n = times;
      parts.put("shell" + n, () -> shell(n));
      parts.put("torus" + n, () -> Meshes.torus(8 << n, 2 << n, 30 * Meshes.MM, 8 * Meshes.MM).mesh());
      parts.put("pinned" + n, () -> pinned(1 << n - 2));
    }
    for (Map.Entry<String, Supplier<Mesh>> part : parts.entrySet()) {
      if (part.getKey().startsWith(only)) {
        time(part.getKey(), part.getValue().get());
      }
    }
  }

  /** A ball of 30 mm with a wall of 2 mm. */
  private static Mesh shell(int times) {
    Soup outer = Meshes.ball(times, 15 * Meshes.MM);
    return outer.add(Meshes.ball(times, 13 * Meshes.MM).flip()).mesh();
  }

  /** A plate with rows of pins and holes. */
  private static Mesh pinned(int rows) {
    Profile pin = Profile.post(3, 0.002);
    Profile hole = Profile.hole(3, 0.002);
    Soup soup = new Soup();
    Mesh one = Mesher.mesh(Prism.of(Profile.rectangle(10, 10).cut(hole), 0, 3)
        .join(Prism.of(pin.move(3, 3), 2, 8)));
    for (int i = 0; i < rows * rows; i++) {
      soup.add(copy(one).move(i % rows * 11 * Meshes.MM, i / rows * 11 * Meshes.MM, 0));
    }
    return soup.mesh();
  }

  private static Soup copy(Mesh mesh) {
    Soup soup = new Soup();
    for (int f = 0; f < mesh.facetCount(); f++) {
      int[][] p = new int[3][];
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        p[k] = new int[] {mesh.x(v), mesh.y(v), mesh.z(v)};
      }
      soup.facet(p[0], p[1], p[2]);
    }
    return soup;
  }

  /** Processor time of this thread, ns: other work on the machine is not in it. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void time(String name, Mesh mesh) throws IOException, StlException {
    Path stl = Files.createTempFile("walls", ".stl");
    StlWriter.write(Proof.judge(mesh).proven().orElseThrow(), name, stl);
    double[] best = {1e99, 1e99, 1e99};
    String found = "";
    for (int i = 0; i < (mesh.facetCount() > 200_000 ? 2 : 6); i++) {
      long t0 = cpu();
      CheckedMesh checked = Proof.judge(StlReader.read(stl).toMesh().mesh()).proven().orElseThrow();
      long t1 = cpu();
      Specimen s = new Specimen(checked, PrintLimits.standard(), Map.of(), Workers.of(1));
      Reading walls = new WallGauge().read(s);
      long t2 = cpu();
      Reading gaps = new GapGauge().read(s);
      long t3 = cpu();
      best[0] = Math.min(best[0], (t1 - t0) / 1e6);
      best[1] = Math.min(best[1], (t2 - t1) / 1e6);
      best[2] = Math.min(best[2], (t3 - t2) / 1e6);
      found = walls.concerns().size() + "+" + gaps.concerns().size() + " " + walls.facts().get(0).words();
    }
    Files.delete(stl);
    System.out.printf(Locale.ROOT, "%-10s %8d facets  read+proof %8.1f ms  walls %8.1f  gaps %8.1f  ratio %.2f  %s%n",
        name, mesh.facetCount(), best[0], best[1], best[2], (best[1] + best[2]) / best[0], found);
  }
}
