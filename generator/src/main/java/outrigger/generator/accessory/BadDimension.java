package outrigger.generator.accessory;

/**
 * Dimensions that cannot work together: the parameter to look at, what is wrong with value and limit, what to change.
 */
public final class BadDimension extends RuntimeException {
  private final String parameter;
  private final String advice;

  /**
   * @param parameter key of the parameter, such as {@code post-diameter}
   * @param what what is wrong, with the values and the limit
   * @param advice what to change, one sentence
   */
  public BadDimension(String parameter, String what, String advice) {
    super(what + ". " + advice);
    this.parameter = parameter;
    this.advice = advice;
  }

  /** Key of the parameter to look at first. */
  public String parameter() {
    return parameter;
  }

  /** What to change. */
  public String advice() {
    return advice;
  }
}
