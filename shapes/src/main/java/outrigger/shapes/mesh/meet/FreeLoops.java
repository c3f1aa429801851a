package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Shares;

/**
 * Finds what need not be laid into the sheet of a plane because it is apart from all else there: closed loops of stretches,
 * of one operand through one face, and whole faces flush with others.
 *
 * <p>Only that operand begins or ends at such a loop, so walking along it tells what it bounds, as on a face without a
 * sheet; of a lone face a look inside and one beside it do. And the rest of the sheet is as if they were not there. For that
 * it is not enough that they meet nothing: their box must hold nothing else of the sheet, though that of a lone face may
 * hold free loops.
 */
final class FreeLoops {
  private final Faces faces;
  private final Contacts contacts;
  private final SheetSegments segments;
  private final LoneFaces loneFaces;
  private final List<List<Integer>> sheets;
  /** Of each plane the stretches on its faces with a sheet; null where there are none. */
  private final List<List<Stretch>> onPlane;
  /** Whether each stretch was followed, at twice its number on f and one more on g. */
  private final boolean[] followed;
  /** Of each plane the boxes of its free loops and lone faces; null where there are none. */
  private final BoxTree[] boxes;
  /** Of each plane its lone faces; null where there are none. */
  private final List<List<Integer>> lone;

  /** A closed loop: its stretches and the face it lies on. */
  private record Loop(int face, List<Stretch> stretches) {
    /** Adds its box, with the gap round it. */
    void enclose(PlaneBounds bounds) {
      bounds.begin();
      for (Stretch s : stretches) {
        bounds.enclose(s.from.at, PlaneBounds.GAP);
      }
    }
  }

  private FreeLoops(Faces faces, Contacts contacts, List<Stretch> stretches, SheetSegments segments,
      List<List<Integer>> sheets) {
    this.faces = faces;
    this.contacts = contacts;
    this.segments = segments;
    this.sheets = sheets;
    loneFaces = new LoneFaces(faces);
    onPlane = Lists.none(faces.planeCount());
    boxes = new BoxTree[faces.planeCount()];
    lone = Lists.none(faces.planeCount());
    followed = new boolean[2 * stretches.size()];
    for (Stretch s : stretches) {
      enter(s, s.f);
      enter(s, s.g);
    }
  }

  private void enter(Stretch s, int face) {
    if (contacts.needsSheet(face)) {
      Lists.add(s, faces.planeOf(face), onPlane);
    }
  }

  /**
   * Finds and notes all, once it is known which faces need a sheet and what contacts left on the planes.
   *
   * @param sheets of each plane the faces that need a sheet; null where there are none. Lone faces are taken out
   */
  static FreeLoops find(Faces faces, Contacts contacts, List<Stretch> stretches, SheetSegments segments,
      List<List<Integer>> sheets) {
    FreeLoops found = new FreeLoops(faces, contacts, stretches, segments, sheets);
    IntList planes = new IntList();
    for (int p = 0; p < faces.planeCount(); p++) {
      if (found.onPlane.get(p) != null || found.loneFaces.isWorthIt(sheets.get(p))) {
        planes.add(p);
      }
    }
    Shares.of(faces.workers(), planes.size(), i -> found.countOn(planes.get(i))).<Void>each(() -> (from, to) -> {
      for (int i = from; i < to; i++) {
        found.findOn(planes.get(i));
      }
      return null;
    });
    return found;
  }

  /** The boxes of the free loops and lone faces of a plane; null where it has none. */
  BoxTree boxesOn(int plane) {
    return boxes[plane];
  }

  /** The lone faces of a plane. */
  List<Integer> loneOn(int plane) {
    return Lists.at(plane, lone);
  }

  private int countOn(int plane) {
    return stretchesOn(plane).size() + segments.countOf(plane, sheets.get(plane));
  }

  private List<Stretch> stretchesOn(int plane) {
    return Lists.at(plane, onPlane);
  }

  private void findOn(int plane) {
    List<Loop> closed = new ArrayList<>();
    for (Stretch s : stretchesOn(plane)) {
      int face = faceOf(s, plane);
      if (!followed[side(s, face)]) {
        List<Stretch> loop = new ArrayList<>();
        boolean isClosed = follow(s, face, loop);
        for (Stretch t : loop) {
          followed[side(t, face)] = true;
        }
        if (isClosed) {
          closed.add(new Loop(face, loop));
        }
      }
    }
    if (!closed.isEmpty() || loneFaces.isWorthIt(sheets.get(plane))) {
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
  private boolean follow(Stretch first, int face, List<Stretch> loop) {
    Stretch s = first;
    Piercing p = first.to;
    do {
      loop.add(s);
      if (!s.isKnown() || !s.crossings().isEmpty() || p.face != face || contacts.isBlocked(p.edge)) {
        return false;
      }
      s = p.beyond(s);
      if (s == null || s != first && followed[side(s, face)]) {
        return false;
      }
      p = s.from == p ? s.to : s.from;
    } while (s != first);
    return true;
  }

  /** Notes those of the closed loops of a plane that are free, and its lone faces. */
  private void keepFree(int plane, List<Loop> closed) {
    // what hangs together comes in turn, so there is no need to sort
    BoxTree tree = BoxTree.inOrder(boundsOn(plane).all());
    PlaneBounds kept = new PlaneBounds();
    for (Loop loop : closed) {
      loop.enclose(kept);
      if (kept.countAtLast(tree, i -> true) == loop.stretches.size()) {
        loop.stretches.forEach(s -> s.setFree(loop.face));
      } else {
        kept.drop();
      }
    }
    List<Stretch> stretches = stretchesOn(plane);
    IntPredicate isLaid = i -> i >= stretches.size() || !stretches.get(i).isFree(faceOf(stretches.get(i), plane));
    List<Integer> alone = new ArrayList<>();
    List<Integer> laid = new ArrayList<>();
    for (int f : sheets.get(plane)) {
      (loneFaces.isLone(f, tree, isLaid, kept) ? alone : laid).add(f);
    }
    lone.set(plane, alone);
    sheets.set(plane, laid);
    boxes[plane] = kept.isEmpty() ? null : BoxTree.inOrder(kept.all());
  }

  /** The boxes of all that lies on a plane, the stretches first. */
  private PlaneBounds boundsOn(int plane) {
    PlaneBounds bounds = new PlaneBounds();
    for (Stretch s : stretchesOn(plane)) {
      bounds.add(s.from.at, s.to.at);
    }
    for (int f : sheets.get(plane)) {
      Face face = faces.face(f);
      for (int e = 0; e < face.edges(); e++) {
        bounds.add(faces.point(face.from[e]), faces.point(face.to[e]));
      }
    }
    segments.forEachLeft(plane, bounds::add);
    return bounds;
  }
}
