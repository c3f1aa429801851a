package outrigger.shapes.mesh.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.num.Workers;

/**
 * One way to bring corners to the grid. Where corners rounded in one way make facets meet again and again, they may come to
 * rest in another.
 *
 * @param frame the axes in which it is done
 * @param upFrom from what part of a step on a coordinate goes up to the grid's next: a half in the first place
 * @param thins whether thin facets are taken away where facets meet, which moves the surface by up to a step
 * @param workers the threads that do it
 */
public record Attempt(Frame frame, double upFrom, boolean thins, Workers workers) {
  /** To the nearest grid point. */
  private static final double HALF = 0.5;
  /** Tried where that does not settle. Any others would do: they need only bring some corners to other grid points. */
  private static final double[] OTHERS = {0.3, 0.7};

  /** Rounding to the nearest grid point, in the axes given. */
  public static final Attempt PLAIN = new Attempt(new Frame(), HALF, false, Workers.of(1));

  /**
   * Makes attempts in turn until one settles, beginning with the nearest grid points in a frame.
   *
   * @throws outrigger.shapes.num.ShapeException if one is refused for another cause, or the last one too does not settle
   */
  public static <T> T inTurn(Frame own, Workers workers, Function<Attempt, T> what) {
    return inTurn(own, workers, what, Optional::empty);
  }

  /**
   * The same.
   *
   * @param otherwise asked once the first attempt has not settled; the others are made where it gives nothing
   */
  public static <T> T inTurn(Frame own, Workers workers, Function<Attempt, T> what, Supplier<Optional<T>> otherwise) {
    UnsettledException last = null;
    for (Attempt attempt : from(own, workers)) {
      try {
        return what.apply(attempt);
      } catch (UnsettledException unsettled) {
        Optional<T> other = last == null ? otherwise.get() : Optional.empty();
        if (other.isPresent()) {
          return other.get();
        }
        last = unsettled.out(attempt.frame());
      }
    }
    throw last;
  }

  /** The first attempt in a frame. */
  public static Attempt nearest(Frame own, Workers workers) {
    return new Attempt(own, HALF, false, workers);
  }

  private static List<Attempt> from(Frame own, Workers workers) {
    List<Attempt> attempts = new ArrayList<>(List.of(nearest(own, workers), new Attempt(own, HALF, true, workers)));
    for (boolean thins : new boolean[] {true, false}) {
      for (double part : OTHERS) {
        attempts.add(new Attempt(own, part, thins, workers));
      }
    }
    own.inOtherOrders().forEach(frame -> attempts.add(new Attempt(frame, HALF, false, workers)));
    return attempts;
  }

  /** The same on some threads. */
  public Attempt on(Workers others) {
    return new Attempt(frame, upFrom, thins, others);
  }

  /** A coordinate of a point, taken to the grid; grid units. */
  public long round(ExactPoint p, int axis) {
    return upFrom == HALF || p.isOnGrid() ? p.grid(axis) : (long) Math.floor(p.rough(axis) + 1 - upFrom);
  }
}
