package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.Map;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.ShapeException;

/**
 * Random expressions, many flush, touching and almost flush on purpose, each proven. Run with a first seed and a count:
 * every result must be sound or refused for a documented cause.
 */
final class KernelCampaign {
  static java.util.function.BiConsumer<Faces, Membership.Tree> hook;
  private static final int MM = 16384;

  record Tally(int sound, Map<String, Integer> refused, List<String> failures) {}

  public static void main(String[] args) {
    long first = Long.parseLong(args[0]);
    int count = Integer.parseInt(args[1]);
    int least = args.length > 2 ? Integer.parseInt(args[2]) : 2;
    int most = args.length > 3 ? Integer.parseInt(args[3]) : 12;
    long start = System.nanoTime();
    Tally tally = run(first, count, least, most);
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
        Mesh mesh = mesh(seed, least, most);
        Proof.Verdict verdict = Proof.judge(mesh);
        if (verdict.proven().isPresent()) {
          sound++;
        } else {
          String rule = verdict.findings().get(0).rule();
          if (rule.contains("vertex") || verdict.findings().get(0).message().contains("touch where")) {
            refused.merge(rule, 1, Integer::sum);
          } else {
            failures.add("seed " + seed + ": " + verdict.findings().get(0));
          }
        }
      } catch (ShapeException e) {
        refused.merge(e.getMessage().replaceAll("[-0-9.]+", "#").substring(0, 40), 1, Integer::sum);
      } catch (RuntimeException | AssertionError e) {
        failures.add("seed " + seed + ": " + e + " at " + (e.getStackTrace().length > 0 ? e.getStackTrace()[0] : ""));
      }
    }
    return new Tally(sound, refused, failures);
  }

  static Mesh mesh(long seed, int least, int most) {
    Random random = new Random(seed);
    Faces faces = new Faces();
    Membership.Tree tree = new Membership.Tree();
    int n = least + random.nextInt(most - least + 1);
    List<Integer> nodes = new ArrayList<>();
    Polyhedron before = null;
    for (int i = 0; i < n; i++) {
      Polyhedron p = before != null && random.nextInt(12) == 0 ? before : operand(random);
      before = p;
      faces.add(p);
      nodes.add(tree.operand());
    }
    while (nodes.size() > 1) {
      int k = Math.min(nodes.size(), 2 + random.nextInt(3));
      List<Integer> part = new ArrayList<>(nodes.subList(0, k));
      nodes.subList(0, k).clear();
      int kind = random.nextInt(7);
      nodes.add(random.nextBoolean() ? 0 : nodes.size(), tree.node(
          kind < 4 ? Membership.Kind.UNION : kind < 6 ? Membership.Kind.CUT : Membership.Kind.COMMON, part));
    }
    if (hook != null) {
      hook.accept(faces, tree);
    }
    return Settler.settle(Kernel.evaluate(faces, tree));
  }

  private static Polyhedron operand(Random random) {
    int axis = random.nextInt(3);
    int lo = coordinate(random, -6, 4);
    int hi = lo + size(random);
    int u = coordinate(random, -6, 6);
    int v = coordinate(random, -6, 6);
    int sides = random.nextInt(3) == 0 ? 4 * (2 + random.nextInt(5)) : 0;
    if (sides == 0) {
      int du = size(random);
      int dv = size(random);
      int[] box = {u, v, u + du, v, u + du, v + dv, u, v + dv};
      if (random.nextInt(5) == 0) {
        box[2] += random.nextInt(3) - 1;
        box[7] -= random.nextInt(3) - 1;
      }
      return ReferencePart.prism(axis, lo, hi, box);
    }
    int[] loop = new int[2 * sides];
    double r = (1 + random.nextInt(4)) * MM;
    double turn = random.nextInt(3) == 0 ? random.nextDouble() : 0;
    for (int i = 0; i < sides; i++) {
      loop[2 * i] = u + (int) Math.rint(r * Math.cos(2 * Math.PI * i / sides + turn));
      loop[2 * i + 1] = v + (int) Math.rint(r * Math.sin(2 * Math.PI * i / sides + turn));
    }
    Polyhedron p = ReferencePart.prism(axis, lo, hi, loop);
    return random.nextInt(4) == 0 ? turned(p, random) : p;
  }

  private static int coordinate(Random random, int lo, int hi) {
    int c = (lo + random.nextInt(hi - lo + 1)) * MM;
    return switch (random.nextInt(10)) {
      case 0 -> c + 1;
      case 1 -> c - 1;
      case 2 -> c + random.nextInt(MM);
      default -> c;
    };
  }

  private static int size(Random random) {
    return (1 + random.nextInt(6)) * MM + (random.nextInt(10) == 0 ? random.nextInt(3) - 1 : 0);
  }

  /** Turned about a random axis, from a millionth of a radian up; its facets then stand each for itself. */
  private static Polyhedron turned(Polyhedron p, Random random) {
    double angle = random.nextBoolean() ? Math.pow(10, -6 + 5 * random.nextDouble()) : random.nextDouble() * 3;
    int k = random.nextInt(3);
    int[] xyz = p.xyz().clone();
    for (int i = 0; i < xyz.length; i += 3) {
      double a = xyz[i + (k + 1) % 3];
      double b = xyz[i + (k + 2) % 3];
      xyz[i + (k + 1) % 3] = (int) Math.rint(a * Math.cos(angle) - b * Math.sin(angle));
      xyz[i + (k + 2) % 3] = (int) Math.rint(a * Math.sin(angle) + b * Math.cos(angle));
    }
    List<int[][]> facets = new ArrayList<>();
    for (int[][] face : p.faces()) {
      for (int i = 1; i + 1 < face[0].length; i++) {
        facets.add(new int[][] {{face[0][0], face[0][i], face[0][i + 1]}});
      }
    }
    return new Polyhedron(xyz, facets);
  }
}
