package outrigger.shapes.mesh.face;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Shares;
import outrigger.shapes.num.Workers;

/**
 * Makes the faces of closed operands, in blocks that several threads may share out. Planes alone are numbered by one thread
 * at a time, in the order of the faces.
 */
final class SolidFaces {
  /** Faces a block. Any number would do that is worth a thread's while and leaves some blocks for each. */
  private static final int BLOCK = 1 << 12;

  private final Faces faces;
  private final int firstOperand;
  private final List<Start> starts = new ArrayList<>();

  /**
   * An operand and where it comes to stand.
   *
   * @param base number of its first vertex
   * @param edge number of its first half-edge
   * @param loop number of its first loop
   */
  private record Start(FlatOperand flat, int base, int edge, int loop) {}

  /** For operands to be added to those that there are. */
  SolidFaces(Faces faces) {
    this.faces = faces;
    firstOperand = faces.operandCount();
  }

  /** The next operand, and the first of its vertices, half-edges and loops. */
  void add(FlatOperand flat, int base, int edge, int loop) {
    starts.add(new Start(flat, base, edge, loop));
  }

  /** Makes all faces, once there is room for them. */
  void fill() {
    int first = faces.firstFace(firstOperand);
    int all = faces.faceCount() - first;
    int block = faces.workers().threads() == 1 ? Math.max(1, all) : BLOCK;
    faces.workers().<Runnable>eachInOrder((all + block - 1) / block, () -> i -> {
      Interrupt.check();
      int from = first + i * block;
      Plane[] planes = makeAll(from, Math.min(first + all, from + block));
      return () -> number(from, planes);
    }, Runnable::run);
    int operands = starts.size();
    Shares.of(faces.workers(), operands, k -> starts.get(k).flat.edgeCount()).each(() -> (from, to) -> {
      for (int k = from; k < to; k++) {
        link(firstOperand + k, k + 1 < operands ? starts.get(k + 1).base : faces.vertexCount());
      }
      return to;
    });
  }

  private void number(int from, Plane[] planes) {
    for (int i = 0; i < planes.length; i++) {
      faces.number(from + i, planes[i]);
    }
  }

  /** Makes the faces from one up to another and returns their planes. */
  private Plane[] makeAll(int from, int to) {
    Plane[] planes = new Plane[to - from];
    int operand = firstOperand;
    for (int f = from; f < to; f++) {
      while (f >= faces.firstFace(operand + 1)) {
        operand++;
      }
      planes[f - from] = make(f, operand);
    }
    return planes;
  }

  private Plane make(int f, int operand) {
    Start start = starts.get(operand - firstOperand);
    int local = f - faces.firstFace(operand);
    int first = start.edge + start.flat.firstEdge(local);
    int[] from = new int[start.flat.firstEdge(local + 1) - start.flat.firstEdge(local)];
    int[] to = new int[from.length];
    int e = 0;
    int number = start.loop + start.flat.firstLoop(local);
    for (int[] loop : start.flat.loops(local)) {
      faces.halfEdges().putLoop(first + e, number++, f, loop, start.base);
      for (int i = 0; i < loop.length; i++) {
        from[e] = start.base + loop[i];
        to[e++] = start.base + loop[i + 1 < loop.length ? i + 1 : 0];
      }
    }
    Plane plane = faces.planeThrough(from);
    int[] across = new int[from.length];
    Arrays.fill(across, -1);
    faces.put(f, new Face(operand, faces.looksUp(plane, from, to), first, from, to, across));
    return plane;
  }

  /** Tells each edge of an operand which one runs the other way. */
  private void link(int operand, int vertexEnd) {
    HalfEdges halfEdges = faces.halfEdges();
    int base = starts.get(operand - firstOperand).base;
    int first = faces.firstEdge(operand);
    int[] twin = halfEdges.twins(first, faces.firstEdge(operand + 1), base, vertexEnd - base, Workers.of(1));
    for (int f = faces.firstFace(operand); f < faces.firstFace(operand + 1); f++) {
      Face face = faces.face(f);
      for (int e = 0; e < face.edges(); e++) {
        int h = face.first + e;
        if (twin[h - first] == Twins.NONE) {
          throw new IllegalStateException("an operand has an open edge");
        } else if (twin[h - first] < 0) {
          throw new ShapeException("a part that is turned touches itself only along a line here, from "
              + place(face.from[e]) + " to " + place(face.to[e]) + ", which no print file can say",
              "Let its parts overlap by a tenth of a millimetre there, or move them apart.");
        }
        halfEdges.setTwin(h, first + twin[h - first]);
        face.across[e] = halfEdges.face(first + twin[h - first]);
      }
    }
  }

  private String place(int vertex) {
    return Place.mm(faces.x(vertex), faces.y(vertex), faces.z(vertex));
  }
}
