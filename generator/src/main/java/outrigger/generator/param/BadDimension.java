package outrigger.generator.param;

/**
 * Dimensions that cannot work together: the parameter to look at, what is wrong with value and limit, what to change.
 */
public final class BadDimension extends RuntimeException implements Refusal {
  private final String parameter;
  private final String what;
  private final String advice;

  /**
   * @param parameter key of the parameter, such as {@code post-diameter}
   * @param what what is wrong, with the values and the limit
   * @param advice what to change, one sentence
   */
  public BadDimension(String parameter, String what, String advice) {
    super(what + ". " + advice);
    this.parameter = parameter;
    this.what = what;
    this.advice = advice;
  }

  @Override
  public String parameter() {
    return parameter;
  }

  @Override
  public String what() {
    return what;
  }

  @Override
  public String advice() {
    return advice;
  }
}
