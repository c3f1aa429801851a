package outrigger.generator.magnet;

import outrigger.generator.param.Refusal;

/** Values that cannot work together: the parameter to look at, what is wrong with value and limit, what to change. */
public final class BadHold extends RuntimeException implements Refusal {
  private final String parameter;
  private final String what;
  private final String advice;

  BadHold(String parameter, String what, String advice) {
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
