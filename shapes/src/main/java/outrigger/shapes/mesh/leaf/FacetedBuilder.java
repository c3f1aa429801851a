package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.solid.Faceted;

/**
 * Builds a solid of facets: those that join over an edge and lie in one plane become one face.
 *
 * <p>Rests on the solid being sound: an edge then has one facet on each side, and two facets in one plane that share an
 * edge look the same way.
 */
final class FacetedBuilder {
  private final int[] xyz;
  private final int[] corners;
  /** Facet across each edge, the edge 3 f + k running from corner k of facet f to the next. */
  private final int[] across;
  /** Number of the face each facet is part of. */
  private final int[] face;

  FacetedBuilder(Faceted solid) {
    xyz = solid.xyz();
    corners = solid.corners();
    across = new int[corners.length];
    face = new int[corners.length / 3];
  }

  Polyhedron build() {
    pair();
    int count = gather();
    IntList[] rims = new IntList[count];
    for (int e = 0; e < corners.length; e++) {
      if (face[across[e]] != face[e / 3]) {
        if (rims[face[e / 3]] == null) {
          rims[face[e / 3]] = new IntList();
        }
        rims[face[e / 3]].add(e);
      }
    }
    List<int[][]> faces = new ArrayList<>(count);
    int[] firstAt = new int[xyz.length / 3];
    Arrays.fill(firstAt, -1);
    for (IntList rim : rims) {
      faces.add(loops(rim, firstAt));
    }
    return new Polyhedron(xyz, faces);
  }

  /** Finds the facet across each edge. */
  private void pair() {
    LongMap map = new LongMap(2 * corners.length);
    for (int e = 0; e < corners.length; e++) {
      map.put(LongMap.edge(from(e), to(e)), e);
    }
    for (int e = 0; e < corners.length; e++) {
      int back = map.get(LongMap.edge(to(e), from(e)));
      if (back < 0) {
        throw new IllegalStateException("a solid of facets has an open edge");
      }
      across[e] = back / 3;
    }
  }

  /** Numbers the faces, walking from facet to facet in one plane; returns how many there are. */
  private int gather() {
    Arrays.fill(face, -1);
    int[] queue = new int[face.length];
    int count = 0;
    for (int first = 0; first < face.length; first++) {
      if (face[first] >= 0) {
        continue;
      }
      int tail = 0;
      queue[tail++] = first;
      face[first] = count;
      for (int head = 0; head < tail; head++) {
        for (int e = 3 * queue[head]; e < 3 * queue[head] + 3; e++) {
          int next = across[e];
          if (face[next] < 0 && isFlat(first, next)) {
            face[next] = count;
            queue[tail++] = next;
          }
        }
      }
      count++;
    }
    return count;
  }

  /** Whether all of a facet lies in the plane of another. */
  private boolean isFlat(int plane, int facet) {
    return side(plane, corners[3 * facet]) == 0 && side(plane, corners[3 * facet + 1]) == 0
        && side(plane, corners[3 * facet + 2]) == 0;
  }

  private int side(int facet, int vertex) {
    int a = 3 * corners[3 * facet];
    int b = 3 * corners[3 * facet + 1];
    int c = 3 * corners[3 * facet + 2];
    int d = 3 * vertex;
    return Sign.side(xyz[a], xyz[a + 1], xyz[a + 2], xyz[b], xyz[b + 1], xyz[b + 2], xyz[c], xyz[c + 1], xyz[c + 2],
        xyz[d], xyz[d + 1], xyz[d + 2]);
  }

  /** Chains the edges round a face; where loops touch in a corner either way through it bounds the same area. */
  private int[][] loops(IntList rim, int[] firstAt) {
    int n = rim.size();
    int[] nextAt = new int[n];
    for (int i = 0; i < n; i++) {
      int from = from(rim.get(i));
      nextAt[i] = firstAt[from];
      firstAt[from] = i;
    }
    List<int[]> loops = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int start = from(rim.get(i));
      IntList loop = new IntList();
      for (int at = start; firstAt[at] >= 0;) {
        int edge = firstAt[at];
        firstAt[at] = nextAt[edge];
        loop.add(at);
        at = to(rim.get(edge));
      }
      if (loop.size() > 0) {
        loops.add(loop.toArray());
      }
    }
    return outerFirst(loops);
  }

  /** The outer loop reaches the face's least x, y, z in that order; no hole does. */
  private int[][] outerFirst(List<int[]> loops) {
    int outer = 0;
    int least = loops.get(0)[0];
    for (int l = 0; l < loops.size(); l++) {
      for (int v : loops.get(l)) {
        if (Arrays.compare(xyz, 3 * v, 3 * v + 3, xyz, 3 * least, 3 * least + 3) < 0) {
          least = v;
          outer = l;
        }
      }
    }
    loops.add(0, loops.remove(outer));
    return loops.toArray(new int[0][]);
  }

  private int from(int edge) {
    return corners[edge];
  }

  private int to(int edge) {
    return corners[FacetCorner.next(edge)];
  }
}
