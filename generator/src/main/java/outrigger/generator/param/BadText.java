package outrigger.generator.param;

/** A text that is no value of its form: the pieces of a message, to be put together where the place is known. */
public final class BadText extends Exception {
  private final String shown;
  private final String complaint;
  private final String limit;
  private final String advice;

  /**
   * @param shown the value as shown in the message
   * @param complaint what is wrong with it, read after "NAME is VALUE, "
   * @param limit the limit it broke, or what was expected
   * @param advice what to change, whole sentences
   */
  BadText(String shown, String complaint, String limit, String advice) {
    super(shown + ", " + complaint + ". " + advice);
    this.shown = shown;
    this.complaint = complaint;
    this.limit = limit;
    this.advice = advice;
  }

  /** The fault this makes of a parameter given somewhere. */
  Fault fault(String subject, String parameter, Given given) {
    String where = given.origin().words();
    boolean isShown = given.isList() || given.text().equals(unquoted()) || Texts.quoted(given.text()).equals(shown);
    String written = isShown ? where : where + ", written " + Texts.plain(given.text());
    String what = parameter + " is " + shown + " (" + written + "), " + complaint;
    return new Fault(subject, parameter, what, given.text(), limit, advice, given.origin());
  }

  private String unquoted() {
    String text = shown.replaceFirst(" (mm|g|degrees C)$", "");
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    return quoted ? text.substring(1, text.length() - 1) : text;
  }
}
