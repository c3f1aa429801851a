package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Grid;

/**
 * Gathers the faces of a polyhedron, giving equal corners of one ring one number and leaving out what has no area.
 *
 * <p>Rings that touch keep corners of their own: each then closes by itself, and the kernel decides what the touch
 * means for the whole.
 */
final class PolyhedronBuilder {
  private record Corner(int x, int y, int z) {
    /** Written out: what a record makes up at run time takes longer than meshing a small part. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Corner c && x == c.x && y == c.y && z == c.z;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * x + y) + z;
    }
  }

  private final Map<Corner, Integer> numbers = new HashMap<>();
  private final List<Corner> corners = new ArrayList<>();
  private final List<int[][]> faces = new ArrayList<>();

  /** Begins a ring: no corner to come is one with a corner before. */
  void startRing() {
    numbers.clear();
  }

  /**
   * Number of the vertex at a place in grid units.
   *
   * @throws outrigger.shapes.num.ShapeException if it lies beyond the grid
   */
  int vertex(int x, int y, int z) {
    Corner corner = new Corner(onGrid(x), onGrid(y), onGrid(z));
    Integer number = numbers.putIfAbsent(corner, corners.size());
    if (number == null) {
      corners.add(corner);
      return corners.size() - 1;
    }
    return number;
  }

  /** Lets a coordinate through that is on the grid; {@link Grid} words the refusal. */
  static int onGrid(long units) {
    if (Math.abs(units) > Grid.LIMIT) {
      Grid.fromMm(Grid.toMm(units));
    }
    return (int) units;
  }

  /** Adds a flat face by its loops: the outer one counter-clockwise seen from outside, then holes clockwise. */
  void face(int[]... loops) {
    faces.add(loops);
  }

  /**
   * Adds the piece of wall a, b, c, d, counter-clockwise seen from outside: one face where it is flat, else two facets.
   * Sides of no length are left out.
   */
  void wall(int a, int b, int c, int d) {
    int[] loop = withoutRepeats(a, b, c, d);
    if (loop.length == 4 && !isFlat(a, b, c, d)) {
      face(new int[] {a, b, c});
      face(new int[] {a, c, d});
    } else if (loop.length >= 3) {
      face(loop);
    }
  }

  /** A loop in which corners that follow themselves, the last and the first too, stand once. */
  static int[] withoutRepeats(int... loop) {
    int[] kept = new int[loop.length];
    int n = 0;
    for (int i = 0; i < loop.length; i++) {
      if (loop[i] != loop[(i + 1) % loop.length]) {
        kept[n++] = loop[i];
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private boolean isFlat(int a, int b, int c, int d) {
    Corner p = corners.get(a);
    Corner q = corners.get(b);
    Corner r = corners.get(c);
    Corner s = corners.get(d);
    return Sign.side(p.x, p.y, p.z, q.x, q.y, q.z, r.x, r.y, r.z, s.x, s.y, s.z) == 0;
  }

  Polyhedron build() {
    int[] xyz = new int[3 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      xyz[3 * i] = corners.get(i).x;
      xyz[3 * i + 1] = corners.get(i).y;
      xyz[3 * i + 2] = corners.get(i).z;
    }
    return new Polyhedron(xyz, List.copyOf(faces));
  }
}
