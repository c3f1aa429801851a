package outrigger.shapes.num;

/**
 * A shape that cannot be described or built: what is wrong (with value and limit) and what to change.
 *
 * <p>It is raised for bad input only; a defect of this library shows as an {@link IllegalStateException} or
 * {@link AssertionError}.
 */
public class ShapeException extends RuntimeException {
  private final String advice;

  /**
   * @param what what is wrong, with the value and the limit it broke
   * @param advice what to change, one sentence
   */
  public ShapeException(String what, String advice) {
    super(what + ". " + advice);
    this.advice = advice;
  }

  /** What to change. */
  public String advice() {
    return advice;
  }
}
