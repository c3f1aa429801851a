package outrigger.shapes.mesh.face;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.num.Workers;

/**
 * Joins neighbouring facets of one plane to many-cornered faces, so that what comes as triangles, a turned part or a
 * reader's file, costs no more than what comes as faces.
 */
final class FlatFaces {
  private final int[] xyz;
  private final List<int[][]> faces;
  private final HalfEdges halfEdges = new HalfEdges();
  /** Of each half-edge whether a triangle goes on flat across it. */
  private boolean[] flat = new boolean[0];
  /** First half-edge of each face, and the end. */
  private final int[] first;

  private FlatFaces(Polyhedron polyhedron) {
    xyz = polyhedron.xyz();
    faces = polyhedron.faces();
    first = new int[faces.size() + 1];
  }

  /** The faces of a polyhedron with flat neighbours joined; as they are where there are no triangles. */
  static List<int[][]> of(Polyhedron polyhedron) {
    boolean triangles = polyhedron.faces().stream().anyMatch(loops -> loops.length == 1 && loops[0].length == 3);
    return triangles ? new FlatFaces(polyhedron).joined() : polyhedron.faces();
  }

  private List<int[][]> joined() {
    load();
    return isAnyFlat() ? rims() : faces;
  }

  /** Numbers the edges of all faces, face by face. */
  private void load() {
    int loops = 0;
    for (int f = 0; f < faces.size(); f++) {
      first[f + 1] = first[f];
      for (int[] loop : faces.get(f)) {
        first[f + 1] += loop.length;
        loops++;
      }
    }
    halfEdges.grow(first[faces.size()], loops);
    for (int f = 0, number = 0; f < faces.size(); f++) {
      int at = first[f];
      for (int[] loop : faces.get(f)) {
        halfEdges.putLoop(at, number++, f, loop, 0);
        at += loop.length;
      }
    }
  }

  /** Finds across which half-edges triangles go on flat, and whether there are any. */
  private boolean isAnyFlat() {
    int[] twin = halfEdges.twins(0, halfEdges.size(), 0, xyz.length / 3, Workers.of(1));
    flat = new boolean[twin.length];
    boolean any = false;
    for (int h = 0; h < flat.length; h++) {
      if (twin[h] >= 0) {
        halfEdges.setTwin(h, twin[h]);
        flat[h] = twin[h] < h ? flat[twin[h]] : isFlat(halfEdges.face(h), twin[h]);
        any |= flat[h];
      }
    }
    return any;
  }

  /** Whether a triangle and the one a half-edge at its rim belongs to lie in one plane. */
  private boolean isFlat(int f, int across) {
    int g = halfEdges.face(across);
    if (!isTriangle(f) || !isTriangle(g)) {
      return false;
    }
    int[] t = faces.get(f)[0];
    int v = halfEdges.from(halfEdges.next(halfEdges.next(across)));
    return Sign.side(xyz[3 * t[0]], xyz[3 * t[0] + 1], xyz[3 * t[0] + 2], xyz[3 * t[1]], xyz[3 * t[1] + 1],
        xyz[3 * t[1] + 2], xyz[3 * t[2]], xyz[3 * t[2] + 1], xyz[3 * t[2] + 2], xyz[3 * v], xyz[3 * v + 1],
        xyz[3 * v + 2]) == 0;
  }

  private boolean isTriangle(int f) {
    return faces.get(f).length == 1 && faces.get(f)[0].length == 3;
  }

  /** The rims of what was joined, each group's together. */
  private List<int[][]> rims() {
    int[] group = groups();
    List<List<int[]>> byGroup = new ArrayList<>();
    for (int f = 0; f < faces.size(); f++) {
      byGroup.add(null);
    }
    boolean[] seen = new boolean[flat.length];
    for (int h = 0; h < flat.length; h++) {
      if (!flat[h] && !seen[h]) {
        int g = group[halfEdges.face(h)];
        if (byGroup.get(g) == null) {
          byGroup.set(g, new ArrayList<>(1));
        }
        byGroup.get(g).add(rim(h, seen));
      }
    }
    List<int[][]> result = new ArrayList<>();
    for (List<int[]> rims : byGroup) {
      if (rims != null) {
        result.add(rims.toArray(new int[0][]));
      }
    }
    return result;
  }

  /** The corners of a rim from a half-edge on that is part of it. */
  private int[] rim(int start, boolean[] seen) {
    int[] rim = new int[8];
    int n = 0;
    int h = start;
    do {
      if (n == rim.length) {
        rim = Arrays.copyOf(rim, 2 * n);
      }
      rim[n++] = halfEdges.from(h);
      seen[h] = true;
      h = halfEdges.next(h);
      while (flat[h]) {
        h = halfEdges.next(halfEdges.twin(h));
      }
    } while (h != start);
    return Arrays.copyOf(rim, n);
  }

  /** For each face the lowest number of those it is joined to. */
  private int[] groups() {
    int[] group = new int[faces.size()];
    Arrays.fill(group, -1);
    int[] stack = new int[faces.size()];
    for (int f = 0; f < group.length; f++) {
      int depth = 0;
      if (group[f] < 0) {
        group[f] = f;
        stack[depth++] = f;
      }
      while (depth > 0) {
        int here = stack[--depth];
        for (int h = first[here]; h < first[here + 1]; h++) {
          int g = flat[h] ? halfEdges.face(halfEdges.twin(h)) : here;
          if (group[g] < 0) {
            group[g] = f;
            stack[depth++] = g;
          }
        }
      }
    }
    return group;
  }
}
