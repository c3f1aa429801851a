package outrigger.shapes.mesh;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.Upright;
import outrigger.shapes.mesh.planar.PlanarWay;
import outrigger.shapes.mesh.settle.Settler;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Workers;

/**
 * A part written as lines of text, one node a line: prisms (P), polyhedra of facets (M), all together (U), the first less
 * the others (D). Coordinates are whole micrometres, brought to the nearest grid point here.
 */
final class ReferencePart {
  /** A line read: its kind, its axis from 0 where it is a prism, and the numbers after that. */
  private static final class Line {
    private final char kind;
    private final int axis;
    private final double[] numbers;

    private Line(String[] words) {
      kind = words[0].charAt(0);
      axis = "XYZ".indexOf(words[2]);
      numbers = Arrays.stream(words).skip(kind == 'P' ? 3 : 2).mapToDouble(Double::parseDouble).toArray();
    }

    private int whole(int i) {
      return (int) numbers[i];
    }

    private int grid(int i) {
      return (int) Math.floor(numbers[i] / 1000 * 16384 + 0.5);
    }
  }

  private final List<Line> lines = new ArrayList<>();

  static ReferencePart named(String name) throws IOException {
    try (InputStream in = ReferencePart.class.getResourceAsStream(name + ".ops")) {
      return of(new String(in.readAllBytes(), StandardCharsets.US_ASCII));
    }
  }

  static ReferencePart of(String text) {
    ReferencePart part = new ReferencePart();
    text.lines().filter(l -> !l.isBlank()).forEach(l -> part.lines.add(new Line(l.split(" "))));
    return part;
  }

  /** The part evaluated by the spatial way. */
  Mesh mesh() {
    return mesh(mesh -> false);
  }

  /** The same, shown on the way to one who may know that it is sound. */
  Mesh mesh(Predicate<Mesh> isSound) {
    return mesh(isSound, Workers.of(1));
  }

  /** The same on some threads, however small the part. */
  Mesh mesh(Predicate<Mesh> isSound, Workers workers) {
    return new Settler(evaluate(workers), Frame.GIVEN, workers, isSound).mesh().orElseThrow();
  }

  /** Whether all operands are prisms along one axis, so that the planar way applies. */
  boolean isPlanar() {
    return lines.stream().noneMatch(l -> l.kind == 'M')
        && lines.stream().filter(l -> l.kind == 'P').map(l -> l.axis).distinct().count() == 1;
  }

  /** The part evaluated by the planar way. */
  Mesh planarMesh() {
    ExpressionTree tree = new ExpressionTree();
    List<Upright> operands = new ArrayList<>();
    node(lines.size() - 1, line -> operands.add(upright(line)), tree);
    return PlanarWay.mesh(operands, tree).orElseThrow();
  }

  Rounded evaluate() {
    return evaluate(Workers.of(1));
  }

  private Rounded evaluate(Workers workers) {
    Faces faces = new Faces(workers);
    return Kernel.evaluate(faces, tree(faces));
  }

  /**
   * The same at one go.
   *
   * @param hide whether what is hidden is left out
   */
  Rounded evaluate(boolean hide) {
    Faces faces = new Faces();
    return Kernel.evaluate(faces, tree(faces), hide);
  }

  private ExpressionTree tree(Faces faces) {
    ExpressionTree tree = new ExpressionTree();
    List<Line> operands = new ArrayList<>();
    node(lines.size() - 1, operands::add, tree);
    faces.addAll(faces.workers().each(operands.size(), i -> polyhedron(operands.get(i))));
    return tree;
  }

  private int node(int id, Consumer<Line> operands, ExpressionTree tree) {
    Line line = lines.get(id);
    if (line.kind == 'P' || line.kind == 'M') {
      operands.accept(line);
      return tree.operand();
    }
    List<Integer> parts = new ArrayList<>();
    for (int i = 1; i < line.numbers.length; i++) {
      parts.add(node(line.whole(i), operands, tree));
    }
    return tree.node(line.kind == 'U' ? ExpressionTree.Kind.UNION : ExpressionTree.Kind.CUT, parts);
  }

  private static Polyhedron polyhedron(Line line) {
    return line.kind == 'P' ? prism(line) : facets(line);
  }

  private static Polyhedron facets(Line line) {
    int nv = line.whole(0);
    int nt = line.whole(1);
    int[] xyz = new int[3 * nv];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = line.grid(2 + i);
    }
    List<int[][]> faces = new ArrayList<>();
    for (int i = 0; i < nt; i++) {
      int[] loop = new int[3];
      for (int k = 0; k < 3; k++) {
        loop[k] = line.whole(2 + 3 * nv + 3 * i + k);
      }
      faces.add(new int[][] {loop});
    }
    return new Polyhedron(xyz, faces);
  }

  private static Polyhedron prism(Line line) {
    return prism(line.axis, line.grid(0), line.grid(1), loops(line));
  }

  private static Upright upright(Line line) {
    int[][] loops = loops(line);
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
        for (int end = 0; end < 2; end++, at += 3) {
          xyz[at + line.axis] = line.grid(end);
          xyz[at + (line.axis + 1) % 3] = loop[i];
          xyz[at + (line.axis + 2) % 3] = loop[i + 1];
        }
      }
    }
    return new Upright(xyz, new int[][] {first});
  }

  private static int[][] loops(Line line) {
    int[][] loops = new int[line.whole(2)][];
    int at = 3;
    for (int l = 0; l < loops.length; l++) {
      int n = line.whole(at++);
      loops[l] = new int[2 * n];
      for (int i = 0; i < 2 * n; i++) {
        loops[l][i] = line.grid(at++);
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
