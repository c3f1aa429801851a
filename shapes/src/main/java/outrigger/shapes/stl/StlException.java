package outrigger.shapes.stl;

/** A file that is not a readable STL: the reason and the byte offset. Pending: fields. */
public final class StlException extends Exception {
  public StlException(String message) {
    super(message);
  }
}
