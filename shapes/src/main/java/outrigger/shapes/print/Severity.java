package outrigger.shapes.print;

/** How much a concern weighs. */
public enum Severity {
  /** It will not come out as drawn: the part is not written unless its maker insists. */
  ERROR,
  /** It may come out poorly or need care; stops nothing. */
  CAUTION
}
