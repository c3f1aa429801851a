package outrigger.generator.param;

import outrigger.presets.UnknownPreset;
import outrigger.shapes.num.ShapeException;

/**
 * The user's side of an exception that refuses dimensions.
 *
 * @param parameter key of the parameter to look at, or empty
 */
public record Refused(String parameter, String what, String advice) {

  /**
   * What an exception refuses.
   *
   * @throws RuntimeException the exception itself, where it is no refusal but a defect
   */
  public static Refused by(Throwable thrown) {
    if (thrown instanceof Refusal r) {
      return new Refused(r.parameter(), r.what(), r.advice());
    }
    if (thrown instanceof ShapeException e) {
      String message = e.getMessage();
      int end = message.length() - e.advice().length() - 2;
      return new Refused("", message.substring(0, end), e.advice());
    }
    if (thrown instanceof UnknownPreset e) {
      return new Refused("", "table " + e.table() + " has no " + Texts.quoted(e.name()),
          NearMiss.advice(e.name(), e.all()));
    }
    if (thrown instanceof RuntimeException e) {
      throw e;
    }
    if (thrown instanceof Error e) {
      throw e;
    }
    throw new IllegalStateException(thrown);
  }

  /** The fault this makes, at the place where the parameter was given. */
  public Fault fault(String subject, ParamValues<?> values) {
    if (parameter.isEmpty()) {
      return new Fault(subject, "", what, "", "", advice, Origin.DEFAULT);
    }
    Given given = values.given(parameter);
    String place = given.origin().kind() == Origin.Kind.DEFAULT
        ? parameter + " is at its default " + given.text()
        : parameter + ": " + given.origin().words();
    return new Fault(subject, parameter, what + " (" + place + ")", given.text(), "", advice, given.origin());
  }
}
