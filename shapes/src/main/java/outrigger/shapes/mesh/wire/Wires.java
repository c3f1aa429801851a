package outrigger.shapes.mesh.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.meet.Arranger;
import outrigger.shapes.mesh.meet.Piercing;
import outrigger.shapes.mesh.meet.Stretch;
import outrigger.shapes.mesh.outline.CornerNumbers;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.Shares;

/**
 * Outlines all faces that need no sheet: has a {@link WireWalker} walk each operand and writes down what it finds, in the
 * order of the operands. A walk never leaves its operand, so several may go on at once.
 */
public final class Wires {
  /** Edges that are worth a thread when written. */
  private static final int AT_ONCE = 1 << 13;

  private final Faces faces;
  private final Arranger arranger;
  private final Outline outline;
  private final Supplier<WireWalker> walker;
  /** Of each edge, by the lower of its half-edges, the piercings along that one; null where there are none. */
  private final Piercing[][] onEdge;
  private final CornerNumbers corners;
  /** Of each corner whether a walk noted it. */
  private final boolean[] noted;

  /**
   * For faces that were arranged.
   *
   * @param locator gives each thread one
   * @param outline where it writes to
   */
  public Wires(Faces faces, Arranger arranger, Hiding hiding, Supplier<Locator> locator, ExpressionTree tree,
      Outline outline) {
    this.faces = faces;
    this.arranger = arranger;
    this.outline = outline;
    onEdge = new Piercing[faces.halfEdges().size()][];
    // each thread has the edges of one part of all
    faces.workers().parts(onEdge.length, (from, to) -> {
      for (Piercing p : arranger.piercings()) {
        if (p.edge >= from && p.edge < to) {
          add(p);
        }
      }
    });
    boolean[] seen = new boolean[faces.halfEdges().loopCount()];
    walker = () -> new WireWalker(faces, arranger, new Surroundings(hiding, locator.get(), tree), onEdge, seen);
    corners = new CornerNumbers(faces, outline);
    noted = new boolean[faces.vertexCount()];
  }

  /** Puts a piercing among those of its edge, in the order in which the lower half-edge comes by them. */
  private void add(Piercing p) {
    Piercing[] before = onEdge[p.edge];
    if (before == null) {
      onEdge[p.edge] = new Piercing[] {p};
      return;
    }
    int axis = axisOf(p.edge);
    boolean rises = faces.coordinate(faces.from(p.edge), axis) < faces.coordinate(faces.to(p.edge), axis);
    Piercing[] all = Arrays.copyOf(before, before.length + 1);
    int i = before.length;
    while (i > 0 && ExactPoint.compare(all[i - 1].at, p.at, axis) == (rises ? 1 : -1)) {
      all[i] = all[--i];
    }
    all[i] = p;
    onEdge[p.edge] = all;
  }

  /** The axis along which a half-edge reaches farthest. */
  private int axisOf(int h) {
    int a = faces.from(h);
    int b = faces.to(h);
    int best = 0;
    for (int k = 1; k < 3; k++) {
      if (reach(a, b, k) > reach(a, b, best)) {
        best = k;
      }
    }
    return best;
  }

  private int reach(int a, int b, int axis) {
    return Math.abs(faces.coordinate(a, axis) - faces.coordinate(b, axis));
  }

  /** Walks all operands and writes down what is found. */
  public void outline() {
    WireWalker own = walker.get();
    WireNotes notes = new WireNotes(noted);
    for (boolean fromCorners : new boolean[] {true, false}) {
      if (faces.workers().threads() == 1) {
        for (int k = 0; k < faces.operandCount(); k++) {
          write(own.walk(k, fromCorners, notes));
        }
      } else {
        walkAll(fromCorners);
      }
    }
    for (Stretch s : arranger.stretches()) {
      if (!s.done && !(arranger.contacts().needsSheet(s.f, s) && arranger.contacts().needsSheet(s.g, s))) {
        write(own.followFromLook(s, notes));
      }
    }
  }

  /** Ends are numbered in the order of the operands, while others are walked; then each thread writes some groups. */
  private void walkAll(boolean fromCorners) {
    List<WireNotes> written = new ArrayList<>();
    Shares.of(faces.workers(), faces.operandCount(), k -> faces.firstFace(k + 1) - faces.firstFace(k)).eachInOrder(() -> {
      WireWalker own = walker.get();
      return (from, to) -> {
        List<WireNotes> all = new ArrayList<>();
        for (int k = from; k < to; k++) {
          all.add(own.walk(k, fromCorners, new WireNotes(noted)));
        }
        return all;
      };
    }, all -> all.forEach(notes -> {
      notes.number(arranger.stretches(), corners, outline);
      written.add(notes);
    }));
    faces.workers().from(AT_ONCE, written.stream().mapToLong(WireNotes::size).sum()).parts(outline.groupEnd(),
        (from, to) -> written.forEach(notes -> notes.write(corners, outline, from, to)));
  }

  private void write(WireNotes notes) {
    notes.number(arranger.stretches(), corners, outline);
    notes.write(corners, outline, 0, outline.groupEnd());
    notes.clear();
  }
}
