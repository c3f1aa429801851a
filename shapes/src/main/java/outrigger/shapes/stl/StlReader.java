package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * Reads binary and ASCII STL.
 *
 * <p>A file is binary exactly if its size is 84 + 50 n bytes, n being the count it gives at byte 80; whether it begins
 * with {@code solid} says nothing, as many binary files do. Any other file is ASCII if it is text and begins with
 * {@code solid}, perhaps after a byte-order mark. The rest is refused with the reason. Nothing is allocated by the count
 * before the size has confirmed it, and the file is read through a small buffer: reading takes 36 bytes a facet, up to
 * two and a half times that while the facets of an ASCII file are being counted.
 */
public final class StlReader {
  /** Facets that one array of floats can hold. */
  static final int MOST_FACETS = (Integer.MAX_VALUE - 8) / 9;

  private static final int HEAD = 512;

  private StlReader() {}

  /**
   * Reads a file whole.
   *
   * @throws StlException if it is not a readable STL file or has no facets; nothing is repaired
   * @throws IOException if it cannot be opened or read
   */
  public static StlFile read(Path file) throws IOException, StlException {
    if (Files.isDirectory(file)) {
      throw new StlException("this is a folder, not a file", 0, "Name a file in it.");
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return read(channel, channel.size());
    }
  }

  private static StlFile read(FileChannel channel, long size) throws IOException, StlException {
    if (size == 0) {
      throw new StlException("the file is empty", 0, "Export it anew.");
    }
    byte[] head = head(channel, size);
    long count = size < BinaryStl.PREFIX ? -1
        : Integer.toUnsignedLong(ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN).getInt(BinaryStl.HEADER));
    if (count >= 0 && size == BinaryStl.size(count)) {
      return BinaryStl.read(channel, head, count);
    }
    if (Content.isText(head) && Content.beginsWithSolid(head)) {
      return AsciiStl.read(channel, Content.mark(head), size);
    }
    throw Content.refusal(head, size, count);
  }

  private static byte[] head(FileChannel channel, long size) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate((int) Math.min(HEAD, size));
    while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
      // a channel may give less than asked for
    }
    return Arrays.copyOf(buffer.array(), buffer.position());
  }
}
