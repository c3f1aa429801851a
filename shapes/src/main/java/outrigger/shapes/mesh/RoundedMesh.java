package outrigger.shapes.mesh;

import java.util.Optional;
import java.util.function.Supplier;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Solid;

/**
 * A solid evaluated, its corners on the grid, of which nobody has looked yet whether rounding made facets meet. It seldom
 * does, and who proves the mesh anyway finds out on the way: so {@link #asIs} can be proven first, and {@link #atRest}
 * asked for where that fails. Both are the same mesh wherever the first is sound.
 */
public final class RoundedMesh {
  /**
   * Corners above which facets are looked at before the proof: there a proof in vain costs more than a look at those few
   * that were rounded. Any number would do.
   */
  private static final int MANY = 60_000;

  private final Optional<Mesh> asIs;
  private final Supplier<Mesh> atRest;

  private RoundedMesh(Optional<Mesh> asIs, Supplier<Mesh> atRest) {
    this.asIs = asIs;
    this.atRest = atRest;
  }

  /**
   * Evaluates a solid whole.
   *
   * @throws ShapeException as {@link Mesher#mesh} does
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public static RoundedMesh of(Solid solid) {
    return PlanarWay.mesh(solid).map(mesh -> new RoundedMesh(Optional.of(mesh), () -> mesh))
        .orElseGet(() -> Mesher.rounded(solid));
  }

  /** Facets in a frame; those as the solid was given are evaluated only if these are refused. */
  static RoundedMesh of(Kernel.Rounded facets, Frame frame, Supplier<Kernel.Rounded> given) {
    Optional<Mesh> asIs = facets.corners().length > MANY ? Optional.empty() : Settler.untried(facets);
    return new RoundedMesh(asIs.map(frame::out), () -> settled(facets, frame, given));
  }

  private static Mesh settled(Kernel.Rounded facets, Frame frame, Supplier<Kernel.Rounded> given) {
    try {
      return frame.out(Settler.settle(facets));
    } catch (ShapeException refusal) {
      return Settler.settle(given.get());
    }
  }

  /** The mesh as it was rounded; empty where it is known not to do as it is, or better looked at first. */
  public Optional<Mesh> asIs() {
    return asIs;
  }

  /**
   * The mesh that {@link Mesher#mesh} makes.
   *
   * @throws ShapeException as {@link Mesher#mesh} does
   */
  public Mesh atRest() {
    return atRest.get();
  }
}
