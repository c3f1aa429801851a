package outrigger.shapes.mesh.spatial;

import java.util.function.Supplier;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Face;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.face.Group;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.inside.Hiding;
import outrigger.shapes.mesh.inside.Locator;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.meet.Arranger;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.mesh.outline.CornerNumbers;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.mesh.sheet.SheetLabels;
import outrigger.shapes.mesh.sheet.SheetWalker;
import outrigger.shapes.mesh.triangulation.FaceTriangulator;
import outrigger.shapes.mesh.wire.Wires;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;

/**
 * Evaluates one expression over operands, plane by plane; see the package page for the steps.
 *
 * <p>Everything up to the last step is exact. Only then are corners where planes meet off the grid rounded to it.
 */
public final class Kernel {
  /** Corners that are worth a thread when rounded. */
  private static final int CORNERS = 1 << 14;

  private Kernel() {}

  /** Evaluates an expression over solid operands. */
  public static Rounded evaluate(Faces faces, ExpressionTree tree) {
    Rounded facets = evaluateAny(faces, tree);
    if (facets.corners().length == 0) {
      throw new ShapeException("nothing is left of the solid, whose first part reaches " + reach(faces, 0)
          + ": all of it is cut away, or outside of what it should have in common with others",
          "Check the sizes and places of its parts.");
    }
    return facets;
  }

  private static String reach(Faces faces, int operand) {
    int[] box = faces.operandBox(operand);
    return "from " + Place.mm(box[0], box[1], box[2]) + " to " + Place.mm(box[3], box[4], box[5]);
  }

  /** The same, without facets where nothing is left. */
  public static Rounded evaluateAny(Faces faces, ExpressionTree tree) {
    if (faces.operandCount() == 1) {
      Outline outline = new Outline(faces);
      Membership within = new Membership(tree);
      within.add(0, 1);
      if (within.inside()) {
        addAll(faces, outline);
      }
      return finish(outline, false);
    }
    try {
      return evaluate(faces, tree, true);
    } catch (IllegalStateException open) {
      // the one cause ever seen is mended, see SheetWalker; should there be another, nothing is left out
      return evaluate(faces, tree, false);
    }
  }

  /**
   * The same at one go.
   *
   * @param hide whether what is hidden is left out
   */
  public static Rounded evaluate(Faces faces, ExpressionTree tree, boolean hide) {
    Outline outline = new Outline(faces);
    addBoundary(faces, tree, hide, outline);
    return finish(outline, false);
  }

  /**
   * Makes one solid of facets that cross and overlap: all that they wind round, without facets if that is nothing.
   *
   * @param mayMeet of each facet whether it may meet others otherwise than in common corners and edges; two that may not do
   *     not
   */
  public static Rounded resolve(int[] xyz, int[] corners, boolean[] mayMeet, Workers workers) {
    Faces faces = new Faces();
    faces.addSoup(xyz, corners, workers);
    ExpressionTree tree = new ExpressionTree();
    tree.operand();
    int[] boxes = BoxTree.boxesOfFacets(xyz, corners, workers);
    BoxTree boxTree = BoxTree.of(boxes, workers);
    Hiding hiding = new Hiding(faces, boxes, tree, true);
    Locator locator = new Locator(faces, boxTree, hiding);
    Contacts contacts = new Contacts(faces);
    new TouchedFacets(faces, xyz, contacts).mark(boxTree, boxes, mayMeet, workers);
    Untouched untouched = new Untouched(faces, contacts);
    Outline outline = new Outline(faces, 0);
    CornerNumbers numbers = new CornerNumbers(faces, outline);
    untouched.keep(locator, outline, numbers);
    Arranger arranger = Arranger.ofSoup(faces, boxTree, boxes, hiding, contacts);
    addSheets(faces, arranger, () -> new SheetWalker(locator, hiding, tree, 1), outline);
    return untouched.join(finish(outline, true), xyz, numbers);
  }

  private static void addAll(Faces faces, Outline outline) {
    CornerNumbers numbers = new CornerNumbers(faces, outline);
    for (int f = 0; f < faces.faceCount(); f++) {
      addWhole(faces, f, numbers, outline);
    }
  }

  private static void addWhole(Faces faces, int f, CornerNumbers numbers, Outline outline) {
    Face face = faces.face(f);
    for (int e = 0; e < face.edges(); e++) {
      if (faces.face(face.across[e]).plane != face.plane) {
        outline.add(Group.of(face.plane, face.up), numbers.of(face.from[e]), numbers.of(face.to[e]));
      }
    }
  }

  private static void addBoundary(Faces faces, ExpressionTree tree, boolean hide, Outline outline) {
    int[] boxes = faces.boxes();
    BoxTree boxTree = BoxTree.of(boxes, faces.workers());
    Hiding hiding = new Hiding(faces, boxes, tree, hide);
    Arranger arranger = Arranger.of(faces, boxTree, boxes, hiding);
    Supplier<Locator> locator = () -> new Locator(faces, boxTree, hiding);
    new Wires(faces, arranger, hiding, locator, tree, outline).outline();
    addSheets(faces, arranger, () -> new SheetWalker(locator.get(), hiding, tree, faces.operandCount()), outline);
  }

  private static void addSheets(Faces faces, Arranger arranger, Supplier<SheetWalker> walker, Outline outline) {
    arranger.addStretches();
    new SheetLabels(faces, arranger, walker).outline(outline);
  }

  /** Brings an outline to its fewest edges, cuts its faces into facets and rounds their corners. */
  public static Rounded finish(Outline outline, boolean soup) {
    outline.simplify(soup);
    return round(outline, FaceTriangulator.triangulate(outline));
  }

  private static Rounded round(Outline outline, int[] corners) {
    int[] xyz = new int[3 * outline.vertexCount()];
    boolean[] moved = new boolean[outline.vertexCount()];
    // not the outline, which would be kept in memory as long as the facets are
    ExactPoint[] before = new ExactPoint[outline.vertexCount()];
    outline.workers().split(outline.vertexCount(), CORNERS, (from, to) -> {
      for (int v = from; v < to; v++) {
        ExactPoint p = outline.point(v);
        for (int k = 0; k < 3; k++) {
          xyz[3 * v + k] = Math.toIntExact(p.grid(k));
        }
        moved[v] = !p.isOnGrid();
        before[v] = moved[v] ? p : null;
      }
    });
    return new Rounded(xyz, corners, moved, (v, k) -> before[v].fixed(k, Rounded.BITS));
  }
}
