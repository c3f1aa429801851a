package outrigger.shapes.mesh;

import java.util.Optional;
import java.util.function.Predicate;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.planar.PlanarWay;
import outrigger.shapes.mesh.settle.Settler;
import outrigger.shapes.mesh.settle.UnsettledException;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;
import outrigger.shapes.solid.Solid;

/**
 * Evaluates a solid to a mesh on the grid: picks the way, and the axes where those given do not do.
 *
 * <p>What does not come to rest as given is evaluated once more as one of its turned operands sees it.
 */
public final class Mesher {
  /** Corners of operands from which on more than one thread is worth its while; measured. */
  static final int MANY = 3_000;

  private final Workers workers;
  private final Solid solid;
  private final Operands operands;
  /** What the parts do as turned operands see them, where the grid did not let them come to rest. */
  private Optional<TouchException> touch = Optional.empty();
  /** Whether the caller has said that the mesh is sound. */
  private boolean known;

  private Mesher(Solid solid, Placement seen, Workers workers) {
    this.workers = workers;
    this.solid = solid;
    operands = new Operands(solid, seen, workers);
  }

  /**
   * Evaluates a solid whole. The mesh is closed, with facets counter-clockwise seen from outside; no two facets cross.
   *
   * @throws outrigger.shapes.num.ShapeException if nothing is left, if the result touches itself along a line, if it
   *     reaches beyond the grid, if it cannot be rounded to the grid, or if it is nested by the thousand
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public static Mesh mesh(Solid solid) {
    return mesh(solid, mesh -> false);
  }

  /**
   * The same, for a caller who proves the mesh. Rounding seldom makes facets meet, and a proof finds that out on the way: so
   * that it need not be looked for, meshes are first shown to the caller.
   *
   * @param isSound asked, once or more, whether a mesh is known to be sound; the one it says so of is the result. False may
   *     mean that it is not known
   */
  public static Mesh mesh(Solid solid, Predicate<Mesh> isSound) {
    return mesh(solid, isSound, Workers.of(1));
  }

  /**
   * The same on several threads: the same mesh, sooner where it is large. Small parts, and what goes the planar way, are
   * made by the caller alone.
   *
   * @param isSound asked by the calling thread only
   */
  public static Mesh mesh(Solid solid, Predicate<Mesh> isSound, Workers workers) {
    try {
      return PlanarWay.mesh(solid).orElseGet(() -> spatial(solid, isSound, workers));
    } catch (StackOverflowError deep) {
      throw new ShapeException("parts are joined and cut in turns, one within the other, more deeply than the thread can "
          + "follow", "Join or cut many at once, or call from a thread with a larger stack.");
    }
  }

  /** Evaluates a solid by the spatial way, whatever it is. */
  static Mesh spatial(Solid solid) {
    return spatial(solid, mesh -> false, Workers.of(1));
  }

  /** The same on several threads. */
  static Mesh spatial(Solid solid, Predicate<Mesh> isSound, Workers workers) {
    Mesher mesher = new Mesher(solid, Placement.IDENTITY, workers);
    if (mesher.operands.isEmpty()) {
      throw new ShapeException("nothing is left of any part of the solid", "Check the sizes and places of its parts.");
    }
    Predicate<Mesh> noted = mesh -> mesher.known = isSound.test(mesh);
    return mesher.framed(Kernel::evaluate, noted).orElseThrow(() -> new ShapeException(
        "what is left of the solid is thinner than the grid of 61 nm", "Check the sizes and places of what is cut."));
  }

  /**
   * Evaluates a solid of which nothing may be left, such as what two parts have in common.
   *
   * @return its mesh as {@link #mesh} makes it; empty where there is no volume, or none thicker than the grid
   * @throws outrigger.shapes.num.ShapeException as {@link #mesh} does, but not for a solid without volume
   */
  public static Optional<Mesh> meshIfAny(Solid solid) {
    return meshIfAny(solid, Workers.of(1));
  }

  /** The same on several threads. */
  static Optional<Mesh> meshIfAny(Solid solid, Workers workers) {
    Optional<Mesh> planar = PlanarWay.mesh(solid);
    return planar.isPresent() ? planar
        : new Mesher(solid, Placement.IDENTITY, workers).framed(Kernel::evaluateAny, mesh -> false);
  }

  /** Evaluates all operands together, brought to a frame. */
  private interface Evaluation {
    Rounded of(Faces faces, ExpressionTree tree);
  }

  /** What an evaluation came to; without a mesh where nothing is left. */
  private record Result(Optional<Mesh> mesh) {}

  /** In the operands' own frame, if there are any; what does not come to rest there, first as a turned operand sees it. */
  private Optional<Mesh> framed(Evaluation evaluation, Predicate<Mesh> isSound) {
    if (operands.isEmpty()) {
      return Optional.empty();
    }
    Workers some = workers.from(MANY, operands.cornerCount());
    Settler settler;
    try {
      Frame own = operands.frame();
      settler = new Settler(evaluation.of(operands.faces(own, some), operands.tree()), own, some, isSound);
    } catch (ShapeException refusal) {
      Optional<Result> straight = refusal instanceof TouchException && operands.areAllTurned() ? inAxesOfOperands(isSound)
          : Optional.empty();
      if (straight.isEmpty()) {
        // what is refused there is refused wherever the operands lie: as they are given, its place is told right
        evaluation.of(operands.faces(Frame.GIVEN, some), operands.tree());
      }
      return straight.orElseThrow(() -> refusal).mesh;
    }
    try {
      Optional<Result> straight = isBent(settler) ? inAxesOfOperands(isSound) : Optional.empty();
      return straight.isPresent() ? straight.get().mesh : settler.mesh();
    } catch (UnsettledException unsettled) {
      throw touch.isPresent() ? touch.get() : unsettled;
    }
  }

  /** Whether what rounding made of the facets does not come to rest, or may touch itself for it. */
  private boolean isBent(Settler settler) {
    return !settler.isAtRest()
        || !known && operands.areAllTurned() && settler.mesh().filter(Settler::touchesItself).isPresent();
  }

  /**
   * Evaluated as seen by one of the operands that are turned by any angle, and turned as a whole: flat faces that several
   * have in common are flat there, where the grid bends them otherwise. Nothing where that does not settle either, or parts
   * touch.
   */
  private Optional<Result> inAxesOfOperands(Predicate<Mesh> isSound) {
    for (Placement turn : operands.axes()) {
      try {
        Optional<Mesh> straight = new Mesher(solid, turn.inverse(), workers).framed(Kernel::evaluateAny, mesh -> false);
        if (straight.isPresent() && Settler.touchesItself(straight.get())) {
          continue;
        } else if (straight.isPresent()) {
          return Optional.of(new Result(Turning.of(straight.get(), turn, workers, isSound)));
        } else if (operands.areTurnedAlike()) {
          return Optional.of(new Result(Optional.empty()));
        }
      } catch (TouchException touching) {
        touch = Optional.of(touching.placed(turn));
      } catch (ShapeException refusal) {
        // nor does it settle so
      }
    }
    return Optional.empty();
  }
}
