package outrigger.shapes.mesh;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A part written as lines of text, one node a line: prisms (P), polyhedra of facets (M), all together (U), the first less
 * the others (D). Coordinates are whole micrometres, brought to the nearest grid point here.
 */
final class ReferencePart {
  private final List<String[]> lines = new ArrayList<>();

  static ReferencePart named(String name) throws IOException {
    try (InputStream in = ReferencePart.class.getResourceAsStream(name + ".ops")) {
      return of(new String(in.readAllBytes(), StandardCharsets.US_ASCII));
    }
  }

  static ReferencePart of(String text) {
    ReferencePart part = new ReferencePart();
    text.lines().filter(l -> !l.isBlank()).forEach(l -> part.lines.add(l.split(" ")));
    return part;
  }

  /** The part evaluated by the spatial way. */
  Mesh mesh() {
    return Settler.settle(evaluate());
  }

  /** Whether all operands are prisms along one axis, so that the planar way applies. */
  boolean isPlanar() {
    return lines.stream().noneMatch(t -> t[0].equals("M"))
        && lines.stream().filter(t -> t[0].equals("P")).map(t -> t[2]).distinct().count() == 1;
  }

  /** The part evaluated by the planar way. */
  Mesh planarMesh() {
    Membership.Tree tree = new Membership.Tree();
    List<Upright> operands = new ArrayList<>();
    node(lines.size() - 1, t -> operands.add(upright(t)), tree);
    return PlanarWay.mesh(operands, tree).orElseThrow();
  }

  Kernel.Rounded evaluate() {
    Faces faces = new Faces();
    Membership.Tree tree = new Membership.Tree();
    node(lines.size() - 1, t -> faces.add(t[0].equals("P") ? prism(t) : facets(t)), tree);
    return Kernel.evaluate(faces, tree);
  }

  private int node(int id, Consumer<String[]> operands, Membership.Tree tree) {
    String[] t = lines.get(id);
    if (t[0].equals("P") || t[0].equals("M")) {
      operands.accept(t);
      return tree.operand();
    }
    List<Integer> parts = new ArrayList<>();
    for (int i = 3; i < t.length; i++) {
      parts.add(node(Integer.parseInt(t[i]), operands, tree));
    }
    return tree.node(t[0].equals("U") ? Membership.Kind.UNION : Membership.Kind.CUT, parts);
  }

  private static int grid(String um) {
    return (int) Math.floor(Double.parseDouble(um) / 1000 * 16384 + 0.5);
  }

  private static Polyhedron facets(String[] t) {
    int nv = Integer.parseInt(t[2]);
    int nt = Integer.parseInt(t[3]);
    int[] xyz = new int[3 * nv];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = grid(t[4 + i]);
    }
    List<int[][]> faces = new ArrayList<>();
    for (int i = 0; i < nt; i++) {
      int[] loop = new int[3];
      for (int k = 0; k < 3; k++) {
        loop[k] = Integer.parseInt(t[4 + 3 * nv + 3 * i + k]);
      }
      faces.add(new int[][] {loop});
    }
    return new Polyhedron(xyz, faces);
  }

  private static Polyhedron prism(String[] t) {
    return prism("XYZ".indexOf(t[2]), grid(t[3]), grid(t[4]), loops(t));
  }

  private static Upright upright(String[] t) {
    int axis = "XYZ".indexOf(t[2]);
    int[][] loops = loops(t);
    int[] first = new int[loops.length];
    int n = 0;
    for (int l = 0; l < loops.length; l++) {
      first[l] = n;
      n += loops[l].length / 2;
    }
    int[] xyz = new int[6 * n];
    int at = 0;
    for (int[] loop : loops) {
      for (int i = 0; i < loop.length; i += 2) {
        for (int end = 3; end <= 4; end++, at += 3) {
          xyz[at + axis] = grid(t[end]);
          xyz[at + (axis + 1) % 3] = loop[i];
          xyz[at + (axis + 2) % 3] = loop[i + 1];
        }
      }
    }
    return new Upright(xyz, new int[][] {first});
  }

  private static int[][] loops(String[] t) {
    int[][] loops = new int[Integer.parseInt(t[5])][];
    int at = 6;
    for (int l = 0; l < loops.length; l++) {
      int n = Integer.parseInt(t[at++]);
      loops[l] = new int[2 * n];
      for (int i = 0; i < 2 * n; i++) {
        loops[l][i] = grid(t[at++]);
      }
    }
    return loops;
  }

  /** A prism along axis 0, 1 or 2 from loops in the two axes after it. */
  static Polyhedron prism(int axis, int lo, int hi, int[]... loops) {
    List<int[]> points = new ArrayList<>();
    List<int[][]> faces = new ArrayList<>();
    int[][] bottom = new int[loops.length][];
    int[][] top = new int[loops.length][];
    for (int l = 0; l < loops.length; l++) {
      int n = loops[l].length / 2;
      bottom[l] = new int[n];
      top[l] = new int[n];
      int base = points.size();
      for (int i = 0; i < n; i++) {
        for (int end = 0; end < 2; end++) {
          int[] p = new int[3];
          p[axis] = end == 0 ? lo : hi;
          p[(axis + 1) % 3] = loops[l][2 * i];
          p[(axis + 2) % 3] = loops[l][2 * i + 1];
          points.add(p);
        }
        top[l][i] = base + 2 * i + 1;
        bottom[l][n - 1 - i] = base + 2 * i;
        int next = base + 2 * ((i + 1) % n);
        faces.add(new int[][] {{base + 2 * i, next, next + 1, base + 2 * i + 1}});
      }
    }
    faces.add(bottom);
    faces.add(top);
    int[] xyz = new int[3 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      System.arraycopy(points.get(i), 0, xyz, 3 * i, 3);
    }
    return new Polyhedron(xyz, faces);
  }
}
