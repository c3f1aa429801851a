package outrigger.shapes.mesh.triangulation;

import java.util.function.IntUnaryOperator;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.num.Grid;

/**
 * A growing Delaunay triangulation of exact points of one plane, some of whose edges are marked and stay.
 *
 * <p>The plane is seen along an axis: two coordinates of each point count. All turns are exact; the circle test, which
 * only shapes the facets, uses the points rounded to the grid. That is safe: each flip lowers the volume under the
 * lifted rounded points, so flipping ends whatever the rounding did.
 *
 * <p>Where points are inserted one by one, vertices 0, 1 and 2 are the corners of one huge triangle round everything. A
 * point is found by walking from the last triangle, so neighbours should be inserted one after the other.
 */
public final class Triangulation extends Triangles {
  /** Corners of the huge triangle: so far out that the square of the grid lies well inside it. */
  private static final long[] FAR_U = {-5L * Grid.LIMIT, 5L * Grid.LIMIT, 0};
  private static final long[] FAR_V = {-2L * Grid.LIMIT, -2L * Grid.LIMIT, 5L * Grid.LIMIT};

  private boolean keepsDelaunay = true;
  /** The triangle that a point was last found in. */
  private int last;
  /** Any number; its sign tells which edge a walk looks at first. */
  private int turner;

  /**
   * Starts anew with nothing but the huge triangle; the room taken before is used again.
   *
   * @param firstAxis the axis that is the first coordinate
   * @param secondAxis the axis that is the second coordinate
   * @param ownPlane number of the plane all points lie in: any other that two points have in common is a line
   */
  void reset(int firstAxis, int secondAxis, int ownPlane) {
    clear(firstAxis, secondAxis, ownPlane);
    last = 0;
    turner = 0;
    for (int corner = 0; corner < 3; corner++) {
      long[] c = new long[3];
      c[firstAxis] = FAR_U[corner];
      c[secondAxis] = FAR_V[corner];
      points().number(ExactPoint.of(c[0], c[1], c[2]));
    }
    add(0, 1, 2);
  }

  /**
   * Whether edges are flipped until they are Delaunay; else triangles stay as they come, which is quicker where they are few
   * and nobody looks at their shape.
   */
  public void keepDelaunay(boolean on) {
    keepsDelaunay = on;
  }

  /** Inserts a point, or finds the vertex that it is. */
  public int insert(ExactPoint p) {
    int before = points().size();
    int id = points().number(p);
    if (id == before) {
      connect(id);
    }
    return id;
  }

  /** Inserts a point that is known to be none of the vertices; later it is not recognised again. */
  int insertNew(ExactPoint p) {
    int id = points().append(p);
    connect(id);
    return id;
  }

  /** Splits the triangle or the edge that a new vertex lies in. */
  private void connect(int id) {
    makeRoomFor(id);
    int t = locate(id);
    int h = edge(t);
    while (h < edge(t) + 3 && turn(origin(h), destination(h), id) != 0) {
      h++;
    }
    if (h < edge(t) + 3) {
      splitEdge(h, id);
    } else {
      splitTriangle(t, id);
    }
    surround();
  }

  /** Flips unmarked edges across from a new vertex until those round it are Delaunay: all others were, and stay so. */
  private void surround() {
    while (!isSettled()) {
      int h = pop();
      if (isWrong(h)) {
        int far = previous(twin(h));
        turnOver(h);
        push(h);
        push(far);
      }
    }
  }

  /**
   * Inserts points that follow each other along outlines, every other one last, every other one of the rest before that,
   * and so on, each sought from the one before it. One after the other, the points of a round hole would each flip the edges
   * of all before.
   *
   * @param insert inserts the point of a number and returns the vertex that it is
   * @return the vertices that the points are
   */
  public int[] insertSpread(int count, IntUnaryOperator insert) {
    int[] vertex = new int[count];
    vertex[0] = insert.applyAsInt(0);
    for (int step = Integer.highestOneBit(count); step > 0; step /= 2) {
      for (int i = step; i < count; i += 2 * step) {
        last = triangle(out(vertex[i - step]));
        vertex[i] = insert.applyAsInt(i);
      }
    }
    return vertex;
  }

  /** Puts a point that lies exactly on an edge there; call {@link #legalize} afterwards. */
  int insertOn(int h, ExactPoint p) {
    int id = points().number(p);
    makeRoomFor(id);
    splitEdge(h, id);
    return id;
  }

  /** Triangle that holds a vertex's point, its rim included: a walk that turns its first look to escape circles. */
  private int locate(int id) {
    int h = edge(last);
    int a = origin(h);
    int b = origin(h + 1);
    int c = origin(h + 2);
    int way = turn(a, b, id) < 0 ? h : turn(b, c, id) < 0 ? h + 1 : turn(c, a, id) < 0 ? h + 2 : -1;
    while (way >= 0) {
      h = twin(way);
      way = wayOn(next(h), previous(h), origin(h), id);
    }
    last = triangle(h);
    return last;
  }

  /** The edge of a triangle entered by its third that parts it from a vertex's point; -1 if none does. */
  private int wayOn(int next, int previous, int entry, int id) {
    int apex = origin(previous);
    // the quick generator of Numerical Recipes; any would do whose sign has no period that a walk could fall in with
    turner = turner * 1664525 + 1013904223;
    if (turner < 0) {
      return turn(origin(next), apex, id) < 0 ? next : turn(apex, entry, id) < 0 ? previous : -1;
    }
    return turn(apex, entry, id) < 0 ? previous : turn(origin(next), apex, id) < 0 ? next : -1;
  }

  /** Flips the edge between two triangles; the four edges round them keep their marks and are looked at again. */
  void flip(int ab) {
    int ba = twin(ab);
    turnOver(ab);
    push(ab);
    push(previous(ab));
    push(ba);
    push(previous(ba));
  }

  /** Flips unmarked edges until all that were touched are Delaunay. */
  void legalize() {
    while (!isSettled()) {
      int h = pop();
      if (isWrong(h)) {
        flip(h);
      }
    }
  }

  /** Whether an edge is to be flipped. */
  private boolean isWrong(int h) {
    return keepsDelaunay && mark(h) == FREE && twin(h) >= 0 && isNotDelaunay(h);
  }

  private boolean isNotDelaunay(int ab) {
    int a = origin(ab);
    int b = destination(ab);
    int c = origin(previous(ab));
    int d = origin(previous(twin(ab)));
    return points().isInCircle(a, b, c, d) && (points().isOnGrid(a) && points().isOnGrid(b) && points().isOnGrid(c)
        && points().isOnGrid(d) || isConvex(ab));
  }
}
