package outrigger.shapes.exact;

/** Places along a space-filling curve through the cells of a cube (Morton). */
public final class Morton {
  /** Bits of a cell's number along each axis, at most. */
  public static final int BITS = 20;

  private Morton() {}

  /** The place of a cell; its numbers from 0 to 2^{@value #BITS} - 1. */
  public static long place(long x, long y, long z) {
    return spread(x) | spread(y) << 1 | spread(z) << 2;
  }

  /** Puts two zeros between bits. */
  private static long spread(long x) {
    long s = (x | x << 32) & 0x001F00000000FFFFL;
    s = (s | s << 16) & 0x001F0000FF0000FFL;
    s = (s | s << 8) & 0x100F00F00F00F00FL;
    s = (s | s << 4) & 0x10C30C30C30C30C3L;
    return (s | s << 2) & 0x1249249249249249L;
  }
}
