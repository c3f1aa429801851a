package outrigger.shapes.stl;

/** A file that is not a readable STL: what is wrong, at which byte, and what to change. */
public final class StlException extends Exception {
  private final String what;
  private final long offset;
  private final String advice;

  /**
   * @param what what is wrong, with the value and the limit
   * @param offset where in the file, counted from 0
   * @param advice what to change, one sentence
   */
  public StlException(String what, long offset, String advice) {
    super(what + " (byte " + offset + "). " + advice);
    this.what = what;
    this.offset = offset;
    this.advice = advice;
  }

  /** What is wrong, without the place. */
  public String what() {
    return what;
  }

  /** Byte of the file at which it is wrong, counted from 0. */
  public long offset() {
    return offset;
  }

  /** What to change. */
  public String advice() {
    return advice;
  }
}
