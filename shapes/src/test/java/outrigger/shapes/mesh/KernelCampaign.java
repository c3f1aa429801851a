package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import outrigger.shapes.check.Finding;
import outrigger.shapes.check.Proof;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.ShapeException;

/**
 * Random expressions, many flush, touching and almost flush on purpose, each proven.
 *
 * <p>Every result must be sound and hold the same random points as the expression does, or be refused because it touches
 * itself or nothing is left. Run it at length by {@code java ... KernelCampaign FIRST_SEED COUNT [LEAST MOST]}.
 */
final class KernelCampaign {

  /** What came of a run: sound results, refusals by cause, and failures, each with its seed. */
  record Tally(int sound, Map<String, Integer> refused, List<String> failures) {}

  private KernelCampaign() {}

  public static void main(String[] args) {
    int least = args.length > 2 ? Integer.parseInt(args[2]) : 2;
    int most = args.length > 3 ? Integer.parseInt(args[3]) : 12;
    long start = System.nanoTime();
    Tally tally = run(Long.parseLong(args[0]), Integer.parseInt(args[1]), least, most);
    System.out.printf("%d sound, refused %s, %d failures, %.1f s%n", tally.sound, tally.refused,
        tally.failures.size(), (System.nanoTime() - start) / 1e9);
    tally.failures.stream().limit(20).forEach(System.out::println);
  }

  static Tally run(long first, int count, int least, int most) {
    int sound = 0;
    Map<String, Integer> refused = new TreeMap<>();
    List<String> failures = new ArrayList<>();
    for (long seed = first; seed < first + count; seed++) {
      try {
        RandomExpression expression = RandomExpression.of(seed, least, most);
        Mesh mesh = expression.mesh();
        String fault = fault(mesh);
        String touch = fault == null ? null : touch(mesh);
        if (fault == null && !holdsTheSame(expression, mesh, new Random(seed))) {
          failures.add("seed " + seed + ": holds other points than the expression");
        } else if (fault == null) {
          sound++;
        } else if (touch == null) {
          refused.merge("touches itself", 1, Integer::sum);
        } else {
          failures.add("seed " + seed + ": " + fault + "; " + touch);
        }
      } catch (ShapeException e) {
        refused.merge(e.getMessage().replaceAll("[-0-9.]+", "#").substring(0, 40), 1, Integer::sum);
      } catch (RuntimeException | AssertionError e) {
        failures.add("seed " + seed + ": " + e);
      }
    }
    return new Tally(sound, refused, failures);
  }

  private static String fault(Mesh mesh) {
    Proof.Verdict verdict = Proof.judge(mesh);
    return verdict.proven().isPresent() ? null
        : verdict.findings().stream().map(Finding::rule).distinct().toList().toString();
  }

  /** Null where all faults are touches: no edge is open and no edge runs through the inside of a facet. */
  private static String touch(Mesh m) {
    Map<Long, Integer> balance = new TreeMap<>();
    for (int f = 0; f < m.facetCount(); f++) {
      for (int k = 0; k < 3; k++) {
        int a = m.corner(f, k);
        int b = m.corner(f, (k + 1) % 3);
        balance.merge(LongMap.edge(Math.min(a, b), Math.max(a, b)), a < b ? 1 : -1, Integer::sum);
      }
    }
    if (balance.values().stream().anyMatch(n -> n != 0)) {
      return "open";
    }
    for (int f = 0; f < m.facetCount(); f++) {
      for (int g = 0; g < m.facetCount(); g++) {
        for (int k = 0; k < 3; k++) {
          if (pierces(m, f, g, m.corner(g, k), m.corner(g, (k + 1) % 3))) {
            return "facet " + g + " pierces " + f;
          }
        }
      }
    }
    return null;
  }

  private static boolean pierces(Mesh m, int f, int g, int p, int q) {
    int a = m.corner(f, 0);
    int b = m.corner(f, 1);
    int c = m.corner(f, 2);
    if (side(m, a, b, c, p) * side(m, a, b, c, q) >= 0) {
      return false;
    }
    int s = side(m, p, q, a, b);
    return s != 0 && s == side(m, p, q, b, c) && s == side(m, p, q, c, a);
  }

  private static int side(Mesh m, int a, int b, int c, int d) {
    return Sign.side(m.x(a), m.y(a), m.z(a), m.x(b), m.y(b), m.z(b), m.x(c), m.y(c), m.z(c), m.x(d), m.y(d), m.z(d));
  }

  private static boolean holdsTheSame(RandomExpression expression, Mesh mesh, Random random) {
    for (int i = 0; i < 40; i++) {
      double[] p = new double[3];
      int v = random.nextInt(mesh.vertexCount());
      int[] near = {mesh.x(v), mesh.y(v), mesh.z(v)};
      for (int k = 0; k < 3; k++) {
        p[k] = near[k] + (random.nextDouble() - 0.5) * 16384 * Math.pow(10, -2 * random.nextDouble());
      }
      if (isClear(expression, p) && expression.holds(p) != (Winding.of(mesh, p) > 0)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point is farther than rounding can reach from where the expression changes, along the axes at least. */
  private static boolean isClear(RandomExpression expression, double[] p) {
    boolean here = expression.holds(p);
    for (int k = 0; k < 3; k++) {
      for (int step = -2; step <= 2; step += 4) {
        double[] q = p.clone();
        q[k] += step;
        if (expression.holds(q) != here) {
          return false;
        }
      }
    }
    return true;
  }
}
