package outrigger.shapes.mesh.sheet;

import java.util.Arrays;
import java.util.function.Predicate;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.InnerLook;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.inside.WindingCount;
import outrigger.shapes.mesh.inside.WindingTaker;
import outrigger.shapes.mesh.triangulation.Triangulation;

/**
 * Walks the triangles of a sheet and labels them, carrying the state above and below the plane along.
 *
 * <p>Two walks: the first, from outside, finds the triangles that operands' faces cover; the second starts in each
 * connected piece of those with a look at what holds there, and anew where steps would carry stale numbers on. Each walk
 * goes depth first and takes back every step, so one state serves.
 */
public final class SheetWalker {
  private final Locator locator;
  private final CellLook look;
  private final Hiding hiding;
  private final Membership above;
  private final Membership below;
  /** How often each operand's faces in the plane cover the place, and how many do. */
  private final int[] cover;
  private int covering;
  private final WindingTaker change = this::change;
  private final WindingTaker coverBy = this::coverBy;

  private Sheet sheet;
  private Triangulation tri;
  /** Of each triangle whether faces in the plane cover it, and whether this walk has come to it. */
  private boolean[] covered = new boolean[64];
  private boolean[] seen = new boolean[64];
  /** Half-edges stepped over on the way to where a walk is. */
  private int[] way = new int[64];

  /** What a walk does on arriving in a triangle, and whether it may step over an edge into another. */
  private interface Visit {
    void enter(int triangle);

    /** Whether it may step over a half-edge, not at the outer rim. */
    boolean mayCross(int halfEdge);

    /** Steps over a half-edge; over its twin it steps back. */
    void cross(int halfEdge);
  }

  /** A walker for one thread, to label one sheet after the other. */
  public SheetWalker(Locator locator, Hiding hiding, ExpressionTree tree, int operands) {
    this.locator = locator;
    look = new CellLook(locator);
    this.hiding = hiding;
    above = new Membership(tree);
    below = new Membership(tree);
    cover = new int[operands];
  }

  /** Labels all triangles of a sheet. */
  void label(Sheet next) {
    sheet = next;
    tri = sheet.triangulation();
    int n = tri.triangleCount();
    if (seen.length < n) {
      covered = new boolean[2 * n];
      seen = new boolean[2 * n];
    }
    Arrays.fill(seen, 0, n, false);
    look.begin(sheet);
    findCovered();
    Arrays.fill(seen, 0, n, false);
    for (int t = 0; t < n; t++) {
      if (covered[t] && !seen[t]) {
        labelPiece(look.largest(t));
      }
    }
  }

  /** Walks over all triangles from outside and notes which of them faces in the plane cover. */
  private void findCovered() {
    walk(Triangulation.triangle(tri.out(0)), new Visit() {
      @Override
      public void enter(int t) {
        covered[t] = covering > 0;
      }

      @Override
      public boolean mayCross(int h) {
        return true;
      }

      @Override
      public void cross(int h) {
        sheet.crossRims(h, coverBy);
      }
    });
  }

  /** Counts faces of an operand that cover the place: as many as it winds more often below than above. */
  private void coverBy(int operand, int up, int down) {
    if (up != down) {
      int before = cover[operand];
      cover[operand] = before + down - up;
      covering += (cover[operand] != 0 ? 1 : 0) - (before != 0 ? 1 : 0);
    }
  }

  private void change(int operand, int up, int down) {
    if (up != 0) {
      above.add(operand, up);
    }
    if (down != 0) {
      below.add(operand, down);
    }
  }

  /** Labels the triangles of a connected piece that can be reached from one without taking numbers anew. */
  private void labelPiece(int start) {
    WindingCount found = look.from(start);
    found.replay(change, 1);
    found.replay(coverBy, 1);
    walk(start, new Visit() {
      @Override
      public void enter(int t) {
        sheet.setLabel(t, !isBoundary() ? Sheet.NONE : below.inside() ? Sheet.UP : Sheet.DOWN);
      }

      @Override
      public boolean mayCross(int h) {
        return covered[Triangulation.triangle(tri.twin(h))] && !sheet.goesStale(h, hiding);
      }

      @Override
      public void cross(int h) {
        sheet.cross(h, change);
        if (hiding.hidesAny()) {
          sheet.crossRims(h, coverBy);
        }
      }
    });
    found.replay(change, -1);
    found.replay(coverBy, -1);
  }

  /**
   * Whether the expression holds on one side of the sheet only, here. An operand without a face here winds as often above
   * as below; where it seems otherwise, one of two faces that stand on the sheet was left out because it is hidden.
   */
  private boolean isBoundary() {
    if (above.inside() == below.inside() || !hiding.hidesAny()) {
      return above.inside() != below.inside();
    }
    int[] numbers = above.numbers();
    boolean evened = even(numbers) | even(below.numbers());
    boolean boundary = above.inside() != below.inside();
    if (evened) {
      above.set(numbers);
    }
    return boundary;
  }

  /** Makes operands that have no face here wind as often above as below; returns whether any did not. */
  private boolean even(int[] numbers) {
    boolean any = false;
    for (int i = 0; i < numbers.length; i += 2) {
      int stale = below.winding(numbers[i]) - above.winding(numbers[i]);
      if (stale != 0 && cover[numbers[i]] == 0) {
        above.add(numbers[i], stale);
        any = true;
      }
    }
    return any;
  }

  /**
   * What a plane bounds inside a triangle that nothing passes through.
   *
   * @param a one of its corners; the other two may be one
   * @param isBarred whether a point is not to be looked from
   */
  byte labelInside(ExactPoint a, ExactPoint b, ExactPoint c, int plane, Predicate<ExactPoint> isBarred) {
    return labelBy(InnerLook.of(locator, a, b, c, plane, isBarred));
  }

  /**
   * What a plane bounds at a point of it.
   *
   * @throws Locator.OnFace if it lies on a face that is not in the plane
   */
  byte labelAt(ExactPoint q, int plane) {
    return labelBy(locator.look(q, plane));
  }

  private byte labelBy(WindingCount found) {
    found.replay(change, 1);
    byte label = above.inside() == below.inside() ? Sheet.NONE : below.inside() ? Sheet.UP : Sheet.DOWN;
    found.replay(change, -1);
    return label;
  }

  /** Depth first from a triangle; on the way back every change is undone. */
  private void walk(int start, Visit visit) {
    int depth = 0;
    seen[start] = true;
    visit.enter(start);
    int t = start;
    int k = 0;
    while (true) {
      if (k < 3) {
        int h = Triangulation.edge(t) + k++;
        int g = tri.twin(h);
        if (g >= 0 && !seen[Triangulation.triangle(g)] && visit.mayCross(h)) {
          visit.cross(h);
          if (depth == way.length) {
            way = Arrays.copyOf(way, 2 * depth);
          }
          way[depth++] = h;
          t = Triangulation.triangle(g);
          k = 0;
          seen[t] = true;
          visit.enter(t);
        }
      } else if (depth > 0) {
        int h = way[--depth];
        visit.cross(tri.twin(h));
        t = Triangulation.triangle(h);
        k = h - Triangulation.edge(t) + 1;
      } else {
        return;
      }
    }
  }
}
