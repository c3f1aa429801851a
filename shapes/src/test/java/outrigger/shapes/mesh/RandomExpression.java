package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A random expression over prisms along all axes, boxes on whole millimetres or a grid step off, and turned prisms, some
 * of them turned by as little as a millionth of a radian; now and then the same operand twice.
 */
final class RandomExpression {
  private static final int MM = 16384;

  private interface Node {
    boolean holds(double[] p);
  }

  private final Faces faces = new Faces();
  private final Membership.Tree tree = new Membership.Tree();
  private Node root;

  private RandomExpression() {}

  static RandomExpression of(long seed, int least, int most) {
    RandomExpression e = new RandomExpression();
    e.fill(new Random(seed), least, most);
    return e;
  }

  Mesh mesh() {
    return Settler.settle(Kernel.evaluate(faces, tree, Attempt.PLAIN), Attempt.PLAIN, mesh -> false);
  }

  /** Whether the expression holds a point, by its operands' windings alone. */
  boolean holds(double[] p) {
    return root.holds(p);
  }

  private void fill(Random random, int least, int most) {
    int n = least + random.nextInt(most - least + 1);
    List<Integer> numbers = new ArrayList<>();
    List<Node> nodes = new ArrayList<>();
    Polyhedron before = null;
    for (int i = 0; i < n; i++) {
      Polyhedron p = before != null && random.nextInt(12) == 0 ? before : operand(random);
      before = p;
      faces.add(p);
      numbers.add(tree.operand());
      nodes.add(q -> Winding.of(p, q) > 0);
    }
    while (nodes.size() > 1) {
      int k = Math.min(nodes.size(), 2 + random.nextInt(3));
      List<Integer> part = new ArrayList<>(numbers.subList(0, k));
      List<Node> parts = new ArrayList<>(nodes.subList(0, k));
      numbers.subList(0, k).clear();
      nodes.subList(0, k).clear();
      int draw = random.nextInt(7);
      Membership.Kind kind = draw < 4 ? Membership.Kind.UNION : draw < 6 ? Membership.Kind.CUT : Membership.Kind.COMMON;
      int at = random.nextBoolean() ? 0 : nodes.size();
      numbers.add(at, tree.node(kind, part));
      nodes.add(at, node(kind, parts));
    }
    root = nodes.get(0);
  }

  private static Node node(Membership.Kind kind, List<Node> parts) {
    return switch (kind) {
      case UNION -> p -> parts.stream().anyMatch(n -> n.holds(p));
      case COMMON -> p -> parts.stream().allMatch(n -> n.holds(p));
      default -> p -> parts.get(0).holds(p) && parts.stream().skip(1).noneMatch(n -> n.holds(p));
    };
  }

  private static Polyhedron operand(Random random) {
    int axis = random.nextInt(3);
    int lo = coordinate(random, -6, 4);
    int hi = lo + size(random);
    int u = coordinate(random, -6, 6);
    int v = coordinate(random, -6, 6);
    if (random.nextInt(3) != 0) {
      int du = size(random);
      int dv = size(random);
      int[] box = {u, v, u + du, v, u + du, v + dv, u, v + dv};
      if (random.nextInt(5) == 0) {
        box[2] += random.nextInt(3) - 1;
        box[7] -= random.nextInt(3) - 1;
      }
      return ReferencePart.prism(axis, lo, hi, box);
    }
    int sides = 4 * (2 + random.nextInt(5));
    int[] loop = new int[2 * sides];
    double r = (1 + random.nextInt(4)) * MM;
    double turn = random.nextInt(3) == 0 ? random.nextDouble() : 0;
    for (int i = 0; i < sides; i++) {
      loop[2 * i] = u + (int) Math.rint(r * StrictMath.cos(2 * Math.PI * i / sides + turn));
      loop[2 * i + 1] = v + (int) Math.rint(r * StrictMath.sin(2 * Math.PI * i / sides + turn));
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

  /** Turned about a random axis; its facets then stand each for itself. */
  private static Polyhedron turned(Polyhedron p, Random random) {
    double angle = random.nextBoolean() ? Math.pow(10, -6 + 5 * random.nextDouble()) : random.nextDouble() * 3;
    int k = random.nextInt(3);
    int[] xyz = p.xyz().clone();
    for (int i = 0; i < xyz.length; i += 3) {
      double a = xyz[i + (k + 1) % 3];
      double b = xyz[i + (k + 2) % 3];
      xyz[i + (k + 1) % 3] = (int) Math.rint(a * StrictMath.cos(angle) - b * StrictMath.sin(angle));
      xyz[i + (k + 2) % 3] = (int) Math.rint(a * StrictMath.sin(angle) + b * StrictMath.cos(angle));
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
