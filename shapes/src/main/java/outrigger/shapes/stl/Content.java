package outrigger.shapes.stl;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Tells by its first bytes and its size what a file is, if it is not a whole binary STL. */
final class Content {
  private static final String[][] KNOWN = {{"PK\u0003\u0004", "a ZIP archive"}, {"\u0089PNG", "a PNG picture"},
      {"\u00ff\u00d8\u00ff", "a JPEG picture"}, {"%PDF", "a PDF document"}, {"\u001f\u008b", "a gzip archive"}};

  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private Content() {}

  /** Whether there are no bytes that text never holds. */
  static boolean isText(byte[] head) {
    for (byte b : head) {
      if (b >= 0 && b < ' ' && !isSpace(b)) {
        return false;
      }
    }
    return true;
  }

  static boolean isSpace(int b) {
    return b == ' ' || b >= '\t' && b <= '\r';
  }

  /** Length of the byte-order mark that some editors put before text in UTF-8; 0 without one. */
  static int mark(byte[] head) {
    return head.length >= MARK.length && Arrays.equals(head, 0, MARK.length, MARK, 0, MARK.length) ? MARK.length : 0;
  }

  /** Whether {@code solid} is the first word, in capitals or not. */
  static boolean beginsWithSolid(byte[] head) {
    int i = mark(head);
    while (i < head.length && isSpace(head[i])) {
      i++;
    }
    String word = new String(head, i, Math.min(6, head.length - i), StandardCharsets.ISO_8859_1);
    return word.regionMatches(true, 0, "solid", 0, 5) && (word.length() == 5 || isSpace(word.charAt(5)));
  }

  /**
   * Why a file is no STL.
   *
   * @param count the facets it gives at byte 80, or -1 if it is too short for that
   */
  static StlException refusal(byte[] head, long size, long count) {
    for (String[] known : KNOWN) {
      if (new String(head, StandardCharsets.ISO_8859_1).startsWith(known[0])) {
        return new StlException("this is " + known[1] + ", not an STL file", 0, "Unpack or export it as STL.");
      }
    }
    if (isText(head)) {
      return new StlException("this is text but does not begin with \"solid\" as ASCII STL must", 0,
          "Export it as STL.");
    }
    if (count < 0) {
      return new StlException("the file ends after " + size + " bytes; a binary STL has a header of "
          + BinaryStl.PREFIX + " bytes before its first facet", size, "Export it anew.");
    }
    return wrongSize(size, count);
  }

  private static StlException wrongSize(long size, long count) {
    if (count > StlReader.MOST_FACETS) {
      return tooMany(count);
    }
    long end = BinaryStl.size(count);
    if (size < end) {
      return new StlException("the file is cut short or is no STL: its count promises " + count + " facets in " + end
          + " bytes, but it ends after " + size + " bytes with "
          + (size - BinaryStl.PREFIX) / BinaryStl.FACET + " whole facets", size, "Copy or export it anew.");
    }
    return new StlException("the file is longer than its count of " + count + " facets says: " + (size - end)
        + " bytes follow after the " + end + " it should have", end, "Export it anew.");
  }

  static StlException tooMany(long count) {
    return new StlException("the count says " + count + " facets, above the limit of " + StlReader.MOST_FACETS,
        BinaryStl.HEADER, "Split the part, or export it anew if it is not that large.");
  }

  /** Text of a header or name: trimmed, unprintable characters as question marks. */
  static String printable(byte[] bytes, int length) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length && bytes[i] != 0; i++) {
      text.append(bytes[i] >= ' ' && bytes[i] < 127 ? (char) bytes[i] : '?');
    }
    return text.toString().strip();
  }
}
