package outrigger.shapes.mesh.planar;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.mesh.triangulation.Triangulation;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.LongMap;

/** Writes down the outlines of the faces that a {@link PlanarSheet} stands for: its walls and, between them, its caps. */
final class PlanarOutline {
  private final PlanarSheet sheet;
  private final Faces faces;
  private final int axis;
  private final Outline outline;
  private final ColumnWalls walls = new ColumnWalls();
  /** Edges along the axis by vertex and group: from one height to another. */
  private final Map<Long, IntList> alongAxis = new HashMap<>();
  /** Of each vertex the walls that end there: from one height to another. */
  private final IntList[] ends;
  private boolean touching;

  private PlanarOutline(PlanarSheet sheet, Faces faces, int axis) {
    this.sheet = sheet;
    this.faces = faces;
    this.axis = axis;
    outline = new Outline(faces);
    ends = new IntList[sheet.triangulation().points().size()];
  }

  /**
   * The outlines of all faces.
   *
   * @param faces has numbers for all planes of the sheet
   * @return empty where parts of the result touch along a line
   */
  static Optional<Outline> of(PlanarSheet sheet, Faces faces, int axis) {
    PlanarOutline all = new PlanarOutline(sheet, faces, axis);
    Triangulation tri = sheet.triangulation();
    for (int t = 0; t < tri.triangleCount(); t++) {
      for (int h = Triangulation.edge(t); h < Triangulation.edge(t) + 3; h++) {
        if (tri.twin(h) > h && tri.mark(h) != Triangulation.FREE) {
          all.add(tri, h);
        }
      }
    }
    all.outlineAlongAxis();
    return all.touching || all.isAnyEdgeCrowded() ? Optional.empty() : Optional.of(all.outline);
  }

  /** Adds the walls along a marked edge and the caps that end there. */
  private void add(Triangulation tri, int h) {
    int[] left = sheet.column(Triangulation.triangle(h));
    int[] right = sheet.column(Triangulation.triangle(tri.twin(h)));
    walls.compare(left, right);
    touching |= walls.areTouching();
    int a = tri.origin(h);
    int b = tri.destination(h);
    for (int i = 0; i < walls.count(); i++) {
      boolean along = walls.matterLeft(i);
      int group = Group.of(sheet.wall(h), looksUp(sheet.wall(h), along == tri.mark(h) > 0));
      addWall(group, along ? a : b, along ? b : a, walls.low(i), walls.high(i));
    }
    addCaps(left, right, a, b);
    addCaps(right, left, b, a);
  }

  /**
   * Whether a wall with the matter on its left looks the way of its plane's normal; it runs from its lesser end or to it.
   */
  private boolean looksUp(int wall, boolean fromLesser) {
    Plane plane = faces.plane(wall);
    long v = plane.normal((axis + 2) % 3);
    return fromLesser == (v != 0 ? v < 0 : plane.normal((axis + 1) % 3) > 0);
  }

  private void addWall(int group, int a, int b, int low, int high) {
    outline.add(group, vertex(a, low), vertex(b, low));
    outline.add(group, vertex(b, high), vertex(a, high));
    addAlongAxis(group, b, low, high);
    addAlongAxis(group, a, high, low);
    addEnd(a, low, high);
    addEnd(b, low, high);
  }

  private void addEnd(int vertex, int low, int high) {
    if (ends[vertex] == null) {
      ends[vertex] = new IntList();
    }
    ends[vertex].add(low);
    ends[vertex].add(high);
  }

  /** Whether more than two walls end at one edge along the axis. */
  private boolean isAnyEdgeCrowded() {
    for (IntList walls : ends) {
      if (walls != null && walls.size() > 4 && isCrowded(walls)) {
        return true;
      }
    }
    return false;
  }

  /** Whether more than two of the walls that end at a vertex do so at one height. */
  private static boolean isCrowded(IntList walls) {
    for (int i = 0; i < walls.size(); i += 2) {
      int there = 0;
      for (int j = 0; j < walls.size(); j += 2) {
        there += walls.get(j) <= walls.get(i) && walls.get(j + 1) > walls.get(i) ? 1 : 0;
      }
      if (there > 2) {
        return true;
      }
    }
    return false;
  }

  private void addAlongAxis(int group, int vertex, int from, int to) {
    IntList spans = alongAxis.computeIfAbsent(LongMap.edge(vertex, group), key -> new IntList());
    spans.add(from);
    spans.add(to);
  }

  /** Outlines edges along the axis: between walls that go on in one plane they run both ways, and cancel out. */
  private void outlineAlongAxis() {
    for (Map.Entry<Long, IntList> entry : alongAxis.entrySet()) {
      int vertex = (int) (entry.getKey() >> 32);
      int group = (int) (long) entry.getKey();
      int[] spans = entry.getValue().toArray();
      int[] heights = spans.clone();
      Arrays.sort(heights);
      for (int i = 1; i < heights.length; i++) {
        int ways = 0;
        for (int s = 0; s < spans.length; s += 2) {
          ways += covers(spans[s], spans[s + 1], heights[i - 1], heights[i]) ? 1 : 0;
          ways -= covers(spans[s + 1], spans[s], heights[i - 1], heights[i]) ? 1 : 0;
        }
        if (ways != 0) {
          outline.add(group, vertex(vertex, ways > 0 ? heights[i - 1] : heights[i]),
              vertex(vertex, ways > 0 ? heights[i] : heights[i - 1]));
        }
      }
    }
  }

  private static boolean covers(int from, int to, int low, int high) {
    return low < high && from <= low && to >= high;
  }

  /** Caps of the left column that end at the edge from a to b, since the right one has none alike. */
  private void addCaps(int[] left, int[] right, int a, int b) {
    for (int i = 0; i < left.length; i++) {
      boolean up = i % 2 == 1;
      int j = Arrays.binarySearch(right, left[i]);
      if (j < 0 || j % 2 == 1 != up) {
        int group = Group.of(sheet.level(left[i]), up);
        outline.add(group, vertex(up ? a : b, left[i]), vertex(up ? b : a, left[i]));
      }
    }
  }

  private int vertex(int v, int height) {
    return outline.vertex(sheet.lifted(v, height));
  }
}
