package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;

/** Cuts a text file into words, keeping count of bytes and lines. Holds one word and one small buffer. */
final class AsciiScanner {
  /** Longer words are neither keywords nor sensible numbers. */
  private static final int LONGEST = 128;

  private final FileChannel channel;
  private final ByteBuffer buffer = ByteBuffer.allocateDirect(1 << 16).limit(0);
  private final byte[] word = new byte[LONGEST];
  private int length;
  private long wordAt;
  private long wordLine = 1;
  private long read;
  private long line = 1;

  /**
   * Starts a file.
   *
   * @param from bytes at its beginning that are no text
   */
  AsciiScanner(FileChannel channel, int from) throws IOException {
    this.channel = channel.position(from);
    read = from;
  }

  /** Goes to the next word; false at the end of the file. */
  boolean next() throws IOException, StlException {
    int b = get();
    while (Content.isSpace(b)) {
      b = get();
    }
    wordAt = b < 0 ? read : read - 1;
    wordLine = line;
    length = 0;
    for (; b >= 0 && !Content.isSpace(b); b = get()) {
      if (length == LONGEST) {
        throw fault("a word of more than " + LONGEST + " characters", "Export the file anew.");
      }
      word[length++] = (byte) b;
    }
    if (b >= 0) {
      back(b);
    }
    return length > 0;
  }

  /**
   * What follows in a line that holds a name.
   *
   * @param name the rest of the line, or what of it stands before a facet; at most {@value #LONGEST} characters
   * @param inFacet whether a facet begins in the line: {@code facet normal} is read
   */
  record Line(String name, boolean inFacet) {}

  /** Reads a name. */
  Line name() throws IOException {
    byte[] text = new byte[LONGEST];
    int n = 0;
    int end = 0;
    FacetWords words = new FacetWords();
    int b = get();
    for (; b >= 0 && b != '\n' && b != '\r'; b = get()) {
      if (words.take(b)) {
        back(b);
        return new Line(trimmed(text, end), true);
      }
      end = words.begins() ? n : end;
      if (n < LONGEST && (n > 0 || !Content.isSpace(b))) {
        text[n++] = (byte) b;
      }
    }
    if (b >= 0) {
      back(b);
    }
    return new Line(trimmed(text, n), false);
  }

  private static String trimmed(byte[] text, int length) {
    int n = length;
    while (n > 0 && Content.isSpace(text[n - 1])) {
      n--;
    }
    return Content.printable(text, n);
  }

  /** Whether the word is the given one, in capitals or not. */
  boolean is(String keyword) {
    return length == keyword.length() && keyword.equalsIgnoreCase(text());
  }

  /** The word. */
  String text() {
    return new String(word, 0, length, StandardCharsets.ISO_8859_1);
  }

  /** The word as it may be shown. */
  String shown() {
    return Content.printable(word, length);
  }

  /** Where the word begins, bytes from 0. */
  long offset() {
    return wordAt;
  }

  /** A fault at the word. */
  StlException fault(String what, String advice) {
    return new StlException("line " + wordLine + ": " + what, wordAt, advice);
  }

  private int get() throws IOException {
    if (!buffer.hasRemaining()) {
      buffer.clear();
      int n = channel.read(buffer);
      buffer.flip();
      if (n <= 0) {
        return -1;
      }
    }
    int b = buffer.get() & 0xFF;
    read++;
    line += b == '\n' ? 1 : 0;
    return b;
  }

  private void back(int b) {
    buffer.position(buffer.position() - 1);
    read--;
    line -= b == '\n' ? 1 : 0;
  }
}
