package outrigger.shapes.print;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Workers;
import outrigger.shapes.stl.StlReader;

/**
 * Times each gauge beside reading, welding and proving the same file: {@code PrintTimes RUNS FILE...}. Medians of processor
 * time on one thread, milliseconds, so that other work on the machine does not count; quote ratios of one run on one
 * machine.
 */
final class PrintTimes {
  private static final double NANOS_PER_MS = 1e6;

  private PrintTimes() {}

  public static void main(String[] args) throws Exception {
    int runs = Integer.parseInt(args[0]);
    for (int i = 1; i < args.length; i++) {
      time(runs, Path.of(args[i]));
    }
  }

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void time(int runs, Path file) throws Exception {
    List<List<Double>> columns = new ArrayList<>();
    for (int run = 0; run < runs; run++) {
      List<Double> row = new ArrayList<>();
      long start = now();
      CheckedMesh mesh = Proof.judge(StlReader.read(file).toMesh().mesh()).proven().orElseThrow();
      row.add((now() - start) / NANOS_PER_MS);
      start = now();
      Specimen specimen = new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1));
      for (Gauge gauge : Printability.gauges()) {
        specimen.reading(gauge);
        row.add((now() - start) / NANOS_PER_MS);
        start = now();
      }
      columns.add(row);
    }
    print(file, columns);
  }

  private static void print(Path file, List<List<Double>> rows) {
    StringBuilder line = new StringBuilder(file.getFileName().toString());
    double gauges = 0;
    double proof = 0;
    for (int k = 0; k < rows.get(0).size(); k++) {
      List<Double> column = new ArrayList<>();
      for (List<Double> row : rows) {
        column.add(row.get(k));
      }
      Collections.sort(column);
      double median = column.get(column.size() / 2);
      String name = k == 0 ? "proof" : Printability.gauges().get(k - 1).name();
      line.append(String.format(Locale.ROOT, "  %s %.1f", name, median));
      proof += k == 0 ? median : 0;
      gauges += k == 0 ? 0 : median;
    }
    System.out.println(line + String.format(Locale.ROOT, "  gauges/proof %.2f", gauges / proof));
  }
}
