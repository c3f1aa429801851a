package outrigger.functions;

import java.nio.ByteBuffer;

/** Steps over the instructions of a method (chapter 6.5). */
final class Instructions {
  static final int INVOKE_DYNAMIC = 0xba;
  private static final int TABLE_SWITCH = 0xaa;
  private static final int LOOKUP_SWITCH = 0xab;
  private static final int WIDE = 0xc4;
  private static final int INCREMENT = 0x84;
  /** Lengths by code from 0 on, 0 for those told otherwise. */
  private static final String LENGTHS = "1111111111111111" + "2323322222111111" + "1111111111111111" + "1111112222211111"
      + "1111111111111111" + "1111111111111111" + "1111111111111111" + "1111111111111111" + "1111311111111111" + "1111111113333333"
      + "3333333332001111" + "1133333335532311" + "3311043355";

  private Instructions() {}

  /** The code of the instruction at a place. */
  static int code(ByteBuffer file, int at) {
    return file.get(at) & 0xff;
  }

  /**
   * How long it is, in bytes.
   *
   * @param at its place in the file
   * @param start where its method's code starts
   */
  static int length(ByteBuffer file, int at, int start) {
    int code = code(file, at);
    int padded = at + 4 - (at - start) % 4;
    return switch (code) {
      case TABLE_SWITCH -> padded + 12 + 4 * (file.getInt(padded + 8) - file.getInt(padded + 4) + 1) - at;
      case LOOKUP_SWITCH -> padded + 8 + 8 * file.getInt(padded + 4) - at;
      case WIDE -> code(file, at + 1) == INCREMENT ? 6 : 4;
      default -> LENGTHS.charAt(code) - '0';
    };
  }
}
