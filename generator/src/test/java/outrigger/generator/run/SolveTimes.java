package outrigger.generator.run;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.PlanReader;

/**
 * Times a plan, warm: read and solved; then its hardware, layout, clashes and loads; then made and proven. Not a test.
 *
 * <p>{@code SolveTimes PLAN [ROUNDS]}; prints medians and least times, ms.
 */
public final class SolveTimes {
  private static final int ROUNDS = 40;
  private static final double PER_MS = 1e6;

  private SolveTimes() {}

  /** Runs it. */
  public static void main(String[] args) {
    Path file = Path.of(args[0]);
    int rounds = args.length > 1 ? Integer.parseInt(args[1]) : ROUNDS;
    double[][] ms = new double[4][rounds];
    for (int i = 0; i < rounds; i++) {
      Workshop workshop = new Workshop();
      long start = System.nanoTime();
      Plan plan = new PlanReader(Accessories.kinds(), Optional.empty(), Map.of()).read(file);
      long solved = System.nanoTime();
      workshop.hardware(plan);
      long hardware = System.nanoTime();
      workshop.working(plan);
      long working = System.nanoTime();
      workshop.make(plan);
      long made = System.nanoTime();
      long[] ends = {start, solved, hardware, working, made};
      for (int step = 0; step < ms.length; step++) {
        ms[step][i] = (ends[step + 1] - ends[step]) / PER_MS;
      }
    }
    String[] names = {"read and solve", "parts as solids, layout, hardware", "meshes, clashes, loads", "gauges and bytes"};
    for (int step = 0; step < names.length; step++) {
      double[] later = Arrays.copyOfRange(ms[step], rounds / 2, rounds);
      Arrays.sort(later);
      System.out.printf(Locale.ROOT, "%-36s %8.1f median %8.1f least%n", names[step], later[later.length / 2], later[0]);
    }
  }
}
