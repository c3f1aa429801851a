package outrigger.shapes.mesh.outline;

import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Shares;
import outrigger.shapes.num.Workers;

/**
 * The edges that bound the result's faces, brought to the fewest that say the same.
 *
 * <p>Edges are gathered by plane and sense ({@link Group}), matter to the left seen from outside. A vertex at which no
 * group's outline bends parts nothing and goes. Then each edge must meet one that runs the other way: where a corner of
 * one face lies within an edge of its neighbour, that edge is split there.
 */
public final class Outline {
  /** Ends of the edges of a group that is one triangle. */
  public static final int TRIANGLE = 6;

  private final Faces faces;
  private final PointNumbers points;
  /** Edges by group; null where a group has none. */
  private final IntList[] byGroup;
  private final IntList groups = new IntList();
  /** Edges of facets that stay as they are beside what is outlined: start, end, start, end, ... */
  private final IntList pinned = new IntList();
  /** Of each vertex whether a group's outline bends there; others are dropped. */
  private boolean[] bends = new boolean[0];

  /** An empty outline; the faces know the planes. There is room at once for as many points as they have corners. */
  public Outline(Faces faces) {
    this(faces, faces.vertexCount());
  }

  /** The same where so many points, about, are expected. */
  public Outline(Faces faces, int room) {
    this.faces = faces;
    points = new PointNumbers(room);
    byGroup = new IntList[2 * faces.planeCount()];
  }

  /** The threads that work on it. */
  public Workers workers() {
    return faces.workers();
  }

  /** A vertex by its number. */
  public ExactPoint point(int vertex) {
    return points.point(vertex);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return points.size();
  }

  /** Number of the greatest group there may be, and one. */
  public int groupEnd() {
    return byGroup.length;
  }

  /** All groups that have edges, in order, once simplified. */
  public IntList groups() {
    return groups;
  }

  /** Edges of a group: start, end, start, end, ... */
  public IntList edges(int group) {
    return byGroup[group];
  }

  /** Number of the vertex at a point, a new one where there is none. */
  public int vertex(ExactPoint p) {
    return points.number(p);
  }

  /** Adds a directed edge to a group. Several threads may, each to groups of its own. */
  public void add(int group, int from, int to) {
    if (byGroup[group] == null) {
      byGroup[group] = new IntList();
    }
    byGroup[group].add(from);
    byGroup[group].add(to);
  }

  /** Adds an edge of a facet that is not outlined but stays as it is: another must run back between the same ends. */
  public void pin(int from, int to) {
    pinned.add(from);
    pinned.add(to);
  }

  IntList pinned() {
    return pinned;
  }

  /**
   * Brings all outlines to their fewest edges.
   *
   * @param soup whether the result may touch itself along a line
   * @throws ShapeException if it does and may not
   */
  public void simplify(boolean soup) {
    bends = new boolean[points.size()];
    for (int i = 0; i < pinned.size(); i++) {
      bends[pinned.get(i)] = true;
    }
    sortGroups();
    inRuns(Outline::markBends);
    inRuns(Outline::straighten);
    new EdgeMatcher(this, soup).match();
  }

  private void sortGroups() {
    groups.clear();
    for (int g = 0; g < byGroup.length; g++) {
      if (byGroup[g] != null) {
        groups.add(g);
      }
    }
  }

  /** What is done with one group; links are for its use. */
  private interface GroupWork {
    void on(Outline outline, int group, Links links);
  }

  /** Does something with all groups, each thread with some of them. */
  private void inRuns(GroupWork work) {
    Shares.of(workers(), groups.size(), i -> byGroup[groups.get(i)].size()).each(() -> {
      Links links = new Links(points.size());
      return (from, to) -> {
        for (int i = from; i < to; i++) {
          work.on(this, groups.get(i), links);
        }
        return to;
      };
    });
  }

  /** The vertices before and after each vertex of one group's outline, side by side: they are asked for together. */
  private static final class Links {
    private final int vertices;
    /** Of each vertex how many edges go out and how many come in, the vertex before it and the one after it. */
    private int[] links = {};

    Links(int vertices) {
      this.vertices = vertices;
    }

    void load(IntList edges) {
      links = links.length == 0 ? new int[4 * vertices] : links;
      for (int i = 0; i < edges.size(); i++) {
        links[4 * edges.get(i)] = 0;
        links[4 * edges.get(i) + 1] = 0;
      }
      for (int i = 0; i < edges.size(); i += 2) {
        int a = edges.get(i);
        int b = edges.get(i + 1);
        links[4 * a]++;
        links[4 * a + 3] = b;
        links[4 * b + 1]++;
        links[4 * b + 2] = a;
      }
    }

    /** Whether one edge comes in at a vertex and one goes out. */
    boolean isPassed(int v) {
      return links[4 * v] == 1 && links[4 * v + 1] == 1;
    }

    int before(int v) {
      return links[4 * v + 2];
    }

    int after(int v) {
      return links[4 * v + 3];
    }
  }

  /** Marks vertices at which a group bends: whoever finds one bent marks it, and nobody takes that back. */
  private void markBends(int group, Links links) {
    IntList edges = byGroup[group];
    if (edges.size() == TRIANGLE) {
      for (int k = 0; k < TRIANGLE; k += 2) {
        bends[edges.get(k)] = true;
      }
      return;
    }
    if (bendsThroughout(edges)) {
      return;
    }
    links.load(edges);
    for (int i = 0; i < edges.size(); i += 2) {
      int a = edges.get(i);
      if (!bends[a]
          && (!links.isPassed(a) || bends(Group.plane(group), point(links.before(a)), point(a), point(links.after(a))))) {
        bends[a] = true;
      }
    }
  }

  private boolean bends(int plane, ExactPoint before, ExactPoint at, ExactPoint after) {
    Plane own = faces.plane(plane);
    return !ExactPoint.shareOtherPlane(at, before, after, plane)
        && ExactPoint.turn(before, at, after, own.firstAxis(), own.secondAxis()) != 0;
  }

  /** Whether every vertex of an outline is marked. */
  private boolean bendsThroughout(IntList edges) {
    for (int i = 0; i < edges.size(); i += 2) {
      if (!bends[edges.get(i)]) {
        return false;
      }
    }
    return true;
  }

  /** Joins the edges of a group over vertices that are not marked. */
  private void straighten(int group, Links links) {
    IntList edges = byGroup[group];
    if (bendsThroughout(edges)) {
      return;
    }
    links.load(edges);
    IntList result = new IntList();
    for (int i = 0; i < edges.size(); i += 2) {
      if (bends[edges.get(i)]) {
        int to = edges.get(i + 1);
        while (!bends[to]) {
          to = links.after(to);
        }
        result.add(edges.get(i));
        result.add(to);
      }
    }
    byGroup[group] = result;
  }

  /** Plane that a group lies in. */
  public Plane plane(int group) {
    return faces.plane(Group.plane(group));
  }

  void replace(int group, IntList edges) {
    byGroup[group] = edges;
  }
}
