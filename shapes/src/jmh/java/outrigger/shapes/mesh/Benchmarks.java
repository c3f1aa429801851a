package outrigger.shapes.mesh;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import outrigger.shapes.exact.LevelCounts;

/**
 * Runs the benchmarks with JMH's own options, then tells medians and how time grows with size. {@code --write FOLDER
 * NAME...} writes parts as text instead, for timing a peer on the same ones. {@code --levels NAME...} counts instead how
 * many exact decisions rested on each level of arithmetic.
 */
public final class Benchmarks {
  private Benchmarks() {}

  public static void main(String[] args) throws IOException, RunnerException, CommandLineOptionException {
    if (args.length > 1 && args[0].equals("--write")) {
      Path folder = Files.createDirectories(Path.of(args[1]));
      for (String name : Arrays.copyOfRange(args, 2, args.length)) {
        Files.writeString(folder.resolve(name + ".ops"), BenchParts.text(name));
      }
    } else if (args.length > 1 && args[0].equals("--levels")) {
      for (String name : Arrays.copyOfRange(args, 1, args.length)) {
        countLevels(name);
      }
    } else {
      time(args);
    }
  }

  private static void countLevels(String name) throws IOException {
    if (!LevelCounts.areKept()) {
      throw new IllegalStateException("start with -Doutrigger.levels=true");
    }
    ReferencePart part = ReferencePart.of(BenchParts.text(name));
    LevelCounts.take();
    Mesh mesh = part.mesh();
    tell(name, "spatial", LevelCounts.take());
    BenchParts.bytes(mesh);
    tell(name, "proof", LevelCounts.take());
    if (part.isPlanar()) {
      part.planarMesh();
      tell(name, "planar", LevelCounts.take());
    }
  }

  private static void tell(String name, String step, LevelCounts counts) {
    System.out.printf(Locale.ROOT, "%-16s %-8s doubles %,12d  64 or 128 bits %,12d  big %,9d%n", name, step, counts.doubles(),
        counts.words(), counts.big());
  }

  private static void time(String[] args) throws RunnerException, CommandLineOptionException {
    Collection<RunResult> results = new Runner(new OptionsBuilder().parent(new CommandLineOptions(args)).build()).run();
    Map<String, Map<Integer, Double>> families = new TreeMap<>();
    for (RunResult result : results) {
      String part = result.getParams().getParam("part");
      String way = result.getParams().getBenchmark().contains("Planar") ? "planar" : "spatial";
      double median = result.getPrimaryResult().getStatistics().getPercentile(50);
      System.out.printf(Locale.ROOT, "%-8s %-16s median %10.3f ms%n", way, part, median);
      if (part.matches(".*-[0-9]+")) {
        int dash = part.lastIndexOf('-');
        families.computeIfAbsent(way + " " + part.substring(0, dash), f -> new TreeMap<>())
            .put(Integer.parseInt(part.substring(dash + 1)), median);
      }
    }
    families.forEach((family, medians) -> {
      if (medians.size() > 1) {
        System.out.printf(Locale.ROOT, "%s: time grows with size to the power %.2f%n", family, exponent(medians));
      }
    });
  }

  /** Slope of the straight line fitted to the logarithms of time over those of size. */
  private static double exponent(Map<Integer, Double> medians) {
    double n = medians.size();
    double x = 0;
    double y = 0;
    double xx = 0;
    double xy = 0;
    for (Map.Entry<Integer, Double> point : medians.entrySet()) {
      double u = Math.log(point.getKey());
      double v = Math.log(point.getValue());
      x += u;
      y += v;
      xx += u * u;
      xy += u * v;
    }
    return (n * xy - x * y) / (n * xx - x * x);
  }
}
