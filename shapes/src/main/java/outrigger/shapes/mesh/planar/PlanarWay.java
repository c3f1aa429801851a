package outrigger.shapes.mesh.planar;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.Upright;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.mesh.settle.Settler;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;
import outrigger.shapes.solid.Solid;

/**
 * Evaluates expressions whose operands all stand along one axis with straight walls: in the plane, with a column of heights
 * over each of its cells.
 *
 * <p>What it makes is what the {@link Kernel} makes of the same. Where it is in doubt, and where the result is to be
 * refused, it makes nothing, and the spatial way has the last word.
 */
public final class PlanarWay {
  private PlanarWay() {}

  /**
   * The mesh of a solid.
   *
   * @return empty where an operand is of another kind, nothing is left, or something is in doubt
   */
  public static Optional<Mesh> mesh(Solid solid) {
    Optional<Uprights> found = Uprights.of(solid);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Uprights uprights = found.get();
    Frame frame = Frame.ofUprights(uprights.operands(), uprights.cutAway());
    return mesh(uprights.operands().stream().map(frame::in).toList(), uprights.tree()).map(frame::out);
  }

  /** The mesh of an expression over operands; empty also where they do not all stand along one axis. */
  public static Optional<Mesh> mesh(List<Upright> operands, ExpressionTree tree) {
    int axis = operands.get(0).axis();
    if (operands.stream().anyMatch(operand -> operand.axis() != axis)) {
      return Optional.empty();
    }
    Rims rims = Rims.of(operands);
    if (rims.meetThemselves()) {
      return Optional.empty();
    }
    Columns columns = new Columns(operands, tree);
    if (rims.areLoose()) {
      return LooseRims.mesh(rims, columns, axis);
    }
    try {
      return arranged(rims, columns, operands, axis).flatMap(
          outline -> new Settler(Kernel.finish(outline, false), Frame.GIVEN, Workers.of(1), mesh -> false).mesh());
    } catch (ShapeException refusal) {
      return Optional.empty();
    }
  }

  /** The outlines of the result's faces; empty where parts of it touch along a line. */
  private static Optional<Outline> arranged(Rims rims, Columns columns, List<Upright> operands, int axis) {
    Faces faces = new Faces();
    PlanarSheet sheet = new PlanarSheet(rims, columns, faces, axis);
    // an outline has room for those planes that have numbers when it is made
    for (Upright operand : operands) {
      sheet.level(operand.low());
      sheet.level(operand.high());
    }
    return PlanarOutline.of(sheet, faces, axis);
  }
}
