package outrigger.shapes.mesh.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.IntList;

/**
 * Makes the mesh of a part whose rims do not meet: along each rim the result changes at the same heights, so that its walls
 * are rectangles from corner to corner, and its caps end at whole rims.
 */
final class LooseRims {
  private final Rims rims;
  private final Columns columns;
  private final int axis;
  private final ColumnWalls walls = new ColumnWalls();
  private final IntList xyz = new IntList();
  private final IntList corners = new IntList();
  /** Of each rim the heights of its corners, ascending, and the number of its first vertex at the first of them. */
  private final int[][] heights;
  private final int[] firstVertex;
  /** Of each rim the number of its first corner among those of all rims, and their number. */
  private final int[] firstCorner;
  /** Rims of caps by height. */
  private final Map<Integer, List<Integer>> lower = new TreeMap<>();
  private final Map<Integer, List<Integer>> upper = new TreeMap<>();
  private boolean touching;

  private LooseRims(Rims rims, Columns columns, int axis) {
    this.rims = rims;
    this.columns = columns;
    this.axis = axis;
    heights = new int[rims.size()][];
    firstVertex = new int[rims.size()];
    firstCorner = new int[rims.size() + 1];
  }

  /** The mesh; empty where parts of it touch along a line, or nothing is left. */
  static Optional<Mesh> mesh(Rims rims, Columns columns, int axis) {
    LooseRims loose = new LooseRims(rims, columns, axis);
    for (int r = 0; r < rims.size(); r++) {
      loose.addRim(r);
    }
    if (loose.touching) {
      return Optional.empty();
    }
    loose.addCaps();
    return loose.corners.size() == 0 ? Optional.empty()
        : Optional.of(Mesh.ofDistinct(loose.xyz.toArray(), loose.corners.toArray()));
  }

  /** Steps over a rim, and adds its vertices and walls and notes its caps. */
  private void addRim(int r) {
    Rim rim = rims.rim(r);
    firstCorner[r + 1] = firstCorner[r] + rim.size();
    IntList around = rims.around(r);
    for (int i = 0; i < around.size(); i++) {
      columns.step(rims.rim(around.get(i)), true);
    }
    int[] outside = columns.column();
    columns.step(rim, true);
    int[] inside = columns.column();
    columns.step(rim, false);
    for (int i = 0; i < around.size(); i++) {
      columns.step(rims.rim(around.get(i)), false);
    }
    walls.compare(inside, outside);
    touching |= walls.areTouching();
    noteCaps(inside, outside, r);
    noteCaps(outside, inside, r);
    addVertices(r, rim);
    for (int i = 0; i < walls.count(); i++) {
      addWalls(r, rim, i);
    }
  }

  /** Notes the caps of one column that end at a rim, since the other has none alike. */
  private void noteCaps(int[] here, int[] there, int r) {
    for (int i = 0; i < here.length; i++) {
      int j = Arrays.binarySearch(there, here[i]);
      if (j < 0 || (i ^ j) % 2 != 0) {
        (i % 2 == 0 ? lower : upper).computeIfAbsent(here[i], z -> new ArrayList<>()).add(r);
      }
    }
  }

  private void addVertices(int r, Rim rim) {
    firstVertex[r] = xyz.size() / 3;
    heights[r] = new int[2 * walls.count()];
    for (int i = 0; i < heights[r].length; i++) {
      int height = i % 2 == 0 ? walls.low(i / 2) : walls.high(i / 2);
      heights[r][i] = height;
      for (int c = 0; c < rim.size(); c++) {
        for (int k = 0; k < 3; k++) {
          xyz.add(k == axis ? height : k == (axis + 1) % 3 ? rim.u[c] : rim.v[c]);
        }
      }
    }
  }

  private void addWalls(int r, Rim rim, int wall) {
    int low = firstVertex[r] + 2 * wall * rim.size();
    int high = low + rim.size();
    boolean inner = walls.matterLeft(wall);
    for (int c = 0; c < rim.size(); c++) {
      int from = inner ? c : rim.next(c);
      int to = inner ? rim.next(c) : c;
      if (risesFromLeast(rim.u[to] - rim.u[from], rim.v[to] - rim.v[from])) {
        add(low + from, low + to, high + to);
        add(high + to, high + from, low + from);
      } else {
        add(low + to, high + to, high + from);
        add(high + from, low + from, low + to);
      }
    }
  }

  /**
   * Whether the lower corner at the start of a wall's edge is joined to the upper one at its end. All four lie on a circle,
   * and the least one by the two coordinates that the wall is seen in, of which one runs along the axis, keeps its
   * diagonal: {@link outrigger.shapes.mesh.triangulation.PlanarPoints#isInCircle} has it so. The other is that along which
   * the edge is longer, as {@link outrigger.shapes.exact.Plane#dominantAxis} has it also of equal ones.
   */
  private boolean risesFromLeast(long du, long dv) {
    long longer = Math.abs(dv) - Math.abs(du);
    boolean isSeenInV = longer > 0 || longer == 0 && (axis + 1) % 3 > (axis + 2) % 3;
    return (isSeenInV ? dv : du) > 0;
  }

  private void add(int a, int b, int c) {
    corners.add(a);
    corners.add(b);
    corners.add(c);
  }

  private void addCaps() {
    CapTriangulator caps = new CapTriangulator(rims, firstCorner);
    lower.forEach((height, of) -> addCap(caps.facets(of), height, of, false));
    upper.forEach((height, of) -> addCap(caps.facets(of), height, of, true));
  }

  private void addCap(int[] facets, int height, List<Integer> of, boolean up) {
    int[] vertex = new int[firstCorner[rims.size()]];
    for (int r : of) {
      int level = Arrays.binarySearch(heights[r], height);
      int first = firstVertex[r] + level * rims.rim(r).size();
      for (int i = firstCorner[r]; i < firstCorner[r + 1]; i++) {
        vertex[i] = first + i - firstCorner[r];
      }
    }
    for (int i = 0; i < facets.length; i += 3) {
      add(vertex[facets[i]], vertex[facets[up ? i + 1 : i + 2]], vertex[facets[up ? i + 2 : i + 1]]);
    }
  }
}
