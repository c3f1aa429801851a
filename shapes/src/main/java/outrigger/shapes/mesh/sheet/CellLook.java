package outrigger.shapes.mesh.sheet;

import java.util.Arrays;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.inside.InnerLook;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.inside.WindingCount;
import outrigger.shapes.mesh.triangulation.Triangulation;

/** Chooses places in the cells of a sheet to look from, and looks what holds there. */
final class CellLook {
  private final Locator locator;
  private Sheet sheet;
  private Triangulation tri;
  private boolean[] reached = new boolean[64];
  private int[] queue = new int[64];

  /** A look for one thread, at one sheet after the other. */
  CellLook(Locator locator) {
    this.locator = locator;
  }

  /** Turns to another sheet. */
  void begin(Sheet next) {
    sheet = next;
    tri = sheet.triangulation();
    int n = tri.triangleCount();
    if (reached.length < n) {
      reached = new boolean[2 * n];
      queue = new int[2 * n];
    }
    Arrays.fill(reached, 0, n, false);
  }

  /** What holds in a cell, seen from inside a triangle of it. */
  WindingCount from(int t) {
    return InnerLook.of(locator, corner(t, 0), corner(t, 1), corner(t, 2), sheet.planeNumber(), sheet::isInUnlaid);
  }

  /** The largest triangle of the cell that one belongs to: the best place to look from. */
  int largest(int start) {
    int tail = 0;
    int best = start;
    double bestArea = -1;
    queue[tail++] = start;
    reached[start] = true;
    for (int head = 0; head < tail; head++) {
      int t = queue[head];
      double area = area(t);
      if (area > bestArea) {
        best = t;
        bestArea = area;
      }
      for (int h = Triangulation.edge(t); h < Triangulation.edge(t) + 3; h++) {
        int next = tri.twin(h) < 0 || tri.mark(h) != Triangulation.FREE ? -1 : Triangulation.triangle(tri.twin(h));
        if (next >= 0 && !reached[next]) {
          reached[next] = true;
          queue[tail++] = next;
        }
      }
    }
    return best;
  }

  private ExactPoint corner(int t, int k) {
    return tri.point(tri.origin(Triangulation.edge(t) + k));
  }

  private double area(int t) {
    ExactPoint a = corner(t, 0);
    ExactPoint b = corner(t, 1);
    ExactPoint c = corner(t, 2);
    return (b.rough(tri.points().u()) - a.rough(tri.points().u())) * (c.rough(tri.points().v()) - a.rough(tri.points().v()))
        - (b.rough(tri.points().v()) - a.rough(tri.points().v())) * (c.rough(tri.points().u()) - a.rough(tri.points().u()));
  }
}
