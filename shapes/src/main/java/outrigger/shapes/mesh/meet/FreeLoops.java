package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Shares;

/**
 * Finds stretches that need not be laid into the sheet of a face they lie on: closed loops, of one operand through one face,
 * apart from all else on that plane.
 *
 * <p>Only that operand begins or ends at such a loop, so walking along it tells what it bounds, as on a face without a
 * sheet; and the rest of the sheet is as if the loop were not there. For the latter it is not enough that they do not meet:
 * the loop's box holds nothing else of the sheet, so that nothing lies inside the loop.
 */
final class FreeLoops {
  /** Grid units between a loop's box and all else: more than rounding can hide, and room for a look from in between. */
  private static final int GAP = 8;
  /** What is known of a stretch on a face: nothing yet, or whether it belongs to a closed loop. */
  private static final byte UNKNOWN = 0;
  private static final byte CLOSED = 1;
  private static final byte OPEN = 2;

  private final Faces faces;
  private final Contacts contacts;
  private final SheetSegments segments;
  private final List<List<Integer>> sheets;
  /** Of each plane the stretches on its faces with a sheet; null where there are none. */
  private final List<List<Stretch>> onPlane;
  /** What is known of each stretch, at twice its number on f and one more on g. */
  private final byte[] known;
  /** Of each plane the boxes of its free loops; null where there are none. */
  private final BoxTree[] boxes;

  /** A closed loop: its stretches and the face it lies on. */
  private record Loop(int face, List<Stretch> stretches) {}

  private FreeLoops(Faces faces, Contacts contacts, List<Stretch> stretches, SheetSegments segments,
      List<List<Integer>> sheets) {
    this.faces = faces;
    this.contacts = contacts;
    this.segments = segments;
    this.sheets = sheets;
    onPlane = new ArrayList<>(Collections.nCopies(faces.planeCount(), null));
    boxes = new BoxTree[faces.planeCount()];
    known = new byte[2 * stretches.size()];
    for (Stretch s : stretches) {
      enter(s, s.f);
      enter(s, s.g);
    }
  }

  private void enter(Stretch s, int face) {
    if (contacts.needsSheet(face)) {
      int p = faces.planeOf(face);
      if (onPlane.get(p) == null) {
        onPlane.set(p, new ArrayList<>());
      }
      onPlane.get(p).add(s);
    }
  }

  /**
   * Finds and notes all, once it is known which faces need a sheet and what contacts left on the planes.
   *
   * @param sheets of each plane the faces that need a sheet; null where there are none
   */
  static FreeLoops find(Faces faces, Contacts contacts, List<Stretch> stretches, SheetSegments segments,
      List<List<Integer>> sheets) {
    FreeLoops found = new FreeLoops(faces, contacts, stretches, segments, sheets);
    IntList planes = new IntList();
    for (int p = 0; p < faces.planeCount(); p++) {
      if (found.onPlane.get(p) != null) {
        planes.add(p);
      }
    }
    Shares.of(faces.workers(), planes.size(), i -> found.onPlane.get(planes.get(i)).size()).<Void>each(() -> (from, to) -> {
      for (int i = from; i < to; i++) {
        found.findOn(planes.get(i));
      }
      return null;
    });
    return found;
  }

  /** The boxes of the free loops of a plane; null where it has none. */
  BoxTree boxesOn(int plane) {
    return boxes[plane];
  }

  private void findOn(int plane) {
    List<Loop> closed = new ArrayList<>();
    for (Stretch s : onPlane.get(plane)) {
      int face = faceOf(s, plane);
      if (known[side(s, face)] == UNKNOWN) {
        List<Stretch> loop = new ArrayList<>();
        boolean isClosed = follow(s, face, loop);
        for (Stretch t : loop) {
          known[side(t, face)] = isClosed ? CLOSED : OPEN;
        }
        if (isClosed) {
          closed.add(new Loop(face, loop));
        }
      }
    }
    if (!closed.isEmpty()) {
      keepFree(plane, closed);
    }
  }

  private int faceOf(Stretch s, int plane) {
    return faces.planeOf(s.f) == plane ? s.f : s.g;
  }

  private static int side(Stretch s, int face) {
    return 2 * s.number + (s.f == face ? 0 : 1);
  }

  /** Follows stretches on a face; whether they come back to the first, and no other operand crosses them. */
  private boolean follow(Stretch first, int face, List<Stretch> followed) {
    Stretch s = first;
    Piercing p = first.to;
    do {
      followed.add(s);
      if (!s.isKnown() || !s.crossings().isEmpty() || p.face != face || contacts.isBlocked(p.edge)) {
        return false;
      }
      s = p.beyond(s);
      if (s == null || s != first && known[side(s, face)] != UNKNOWN) {
        return false;
      }
      p = s.from == p ? s.to : s.from;
    } while (s != first);
    return true;
  }

  /** Notes those of the closed loops of a plane that are free. */
  private void keepFree(int plane, List<Loop> closed) {
    Bounds bounds = new Bounds();
    for (Loop loop : closed) {
      bounds.add(loop);
    }
    for (Stretch s : onPlane.get(plane)) {
      if (known[side(s, faceOf(s, plane))] == OPEN) {
        bounds.add(s.from.at, s.to.at);
      }
    }
    for (int f : sheets.get(plane)) {
      Face face = faces.face(f);
      for (int e = 0; e < face.edges(); e++) {
        bounds.add(faces.point(face.from[e]), faces.point(face.to[e]));
      }
    }
    segments.forEachLeft(plane, bounds::add);
    int[] all = bounds.all();
    BoxTree tree = BoxTree.of(all);
    Bounds free = new Bounds();
    for (int k = 0; k < closed.size(); k++) {
      Loop loop = closed.get(k);
      int[] near = {0};
      tree.forEachOverlap(all[6 * k], all[6 * k + 1], all[6 * k + 2], all[6 * k + 3], all[6 * k + 4], all[6 * k + 5],
          i -> near[0]++);
      if (near[0] == 1) {
        loop.stretches.forEach(s -> s.free(loop.face));
        free.add(loop);
      }
    }
    boxes[plane] = free.all().length == 0 ? null : BoxTree.of(free.all());
  }

  /** Boxes, of loops with the gap round them. */
  private static final class Bounds {
    private int[] bounds = new int[6 * 32];
    private int size;

    void add(Loop loop) {
      begin();
      for (Stretch s : loop.stretches) {
        enclose(s.from.at, GAP);
      }
    }

    void add(ExactPoint from, ExactPoint to) {
      begin();
      enclose(from, 0);
      enclose(to, 0);
    }

    private void begin() {
      if (6 * size == bounds.length) {
        bounds = Arrays.copyOf(bounds, 2 * bounds.length);
      }
      BoxTree.clear(bounds, size++);
    }

    private void enclose(ExactPoint p, int gap) {
      for (int k = 0; k < 3; k++) {
        int at = 6 * (size - 1) + k;
        bounds[at] = Math.min(bounds[at], (int) p.grid(k) - gap);
        bounds[at + 3] = Math.max(bounds[at + 3], (int) p.grid(k) + gap);
      }
    }

    int[] all() {
      return Arrays.copyOf(bounds, 6 * size);
    }
  }
}
