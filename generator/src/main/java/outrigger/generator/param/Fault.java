package outrigger.generator.param;

/**
 * One thing wrong with what a user gave. Text parts are empty, never null, where they do not apply.
 *
 * @param subject the part, command or file it concerns, such as {@code cab-front-left}
 * @param parameter key of the parameter at fault
 * @param what what is wrong, with the value and the limit, no full stop
 * @param value the value at fault as the user wrote it
 * @param limit the limit it broke, such as {@code at least 1 mm}
 * @param advice what to change, whole sentences
 * @param where where it was written
 */
public record Fault(String subject, String parameter, String what, String value, String limit, String advice,
    Origin where) {

  /** A fault that concerns no single parameter. */
  public static Fault of(String subject, String what, String advice, Origin where) {
    return new Fault(subject, "", what, "", "", advice, where);
  }

  /** The fault on one line: what is wrong, the value, where it stands, the limit, what to change. */
  public String message() {
    return (subject.isEmpty() ? "" : subject + ": ") + what + "." + (advice.isEmpty() ? "" : " " + advice);
  }

  /** The same fault about another subject. */
  public Fault about(String newSubject) {
    return new Fault(newSubject, parameter, what, value, limit, advice, where);
  }
}
