package outrigger.shapes.mesh.frame;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import outrigger.shapes.num.Workers;

/**
 * One way to bring corners to the grid. Where corners rounded in one way make facets meet again and again, they may come to
 * rest in another.
 *
 * @param frame the axes in which it is done
 * @param remedy what is done where rounding makes facets meet
 * @param workers the threads that do it
 */
public record Attempt(Frame frame, Remedy remedy, Workers workers) {
  /** What is done where rounding makes facets meet. */
  public enum Remedy {
    /** They are cut anew and rounded again: no surface moves by more than that. */
    CUT,
    /** Their corners are first put clear of each other, by some steps. */
    SPREAD,
    /** Thin ones are taken away, which moves the surface by up to a step, and the others cut anew. */
    THIN
  }

  /** Cutting anew, in the axes given. */
  public static final Attempt PLAIN = new Attempt(new Frame(), Remedy.CUT, Workers.of(1));

  /**
   * Makes attempts in a frame until one settles, one by each remedy.
   *
   * @throws outrigger.shapes.num.ShapeException if one is refused for another cause, or none settles
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
    UnsettledException first = null;
    for (Remedy remedy : Remedy.values()) {
      try {
        return what.apply(new Attempt(own, remedy, workers));
      } catch (UnsettledException unsettled) {
        Optional<T> other = first == null ? otherwise.get() : Optional.empty();
        if (other.isPresent()) {
          return other.get();
        }
        first = first == null ? unsettled.out(own) : first;
      }
    }
    throw first;
  }

  /** The first attempt in a frame. */
  public static Attempt nearest(Frame own, Workers workers) {
    return new Attempt(own, Remedy.CUT, workers);
  }

  /** The same on some threads. */
  public Attempt on(Workers others) {
    return new Attempt(frame, remedy, others);
  }
}
