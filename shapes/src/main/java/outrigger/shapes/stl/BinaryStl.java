package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;

/**
 * The binary layout: 80 bytes of header, a 32-bit unsigned count, then for each facet twelve 32-bit floats (normal and
 * three corners) and a 16-bit attribute; all little-endian.
 */
final class BinaryStl {
  static final int HEADER = 80;
  static final int PREFIX = HEADER + Integer.BYTES;
  static final int FACET = 50;

  private static final int CORNERS_AT = 12;
  private static final int AT_ONCE = 1024;

  private BinaryStl() {}

  /** Bytes of a file with so many facets. */
  static long size(long count) {
    return PREFIX + FACET * count;
  }

  /** Reads a file whose size is known to agree with its count. */
  static StlFile read(FileChannel channel, byte[] head, long count) throws IOException, StlException {
    if (count == 0) {
      throw new StlException("the file has no facets: its count is 0", HEADER, "Export it anew.");
    }
    if (count > StlReader.MOST_FACETS) {
      throw Content.tooMany(count);
    }
    float[] coordinates = new float[9 * (int) count];
    ByteBuffer buffer = ByteBuffer.allocateDirect(AT_ONCE * FACET).order(ByteOrder.LITTLE_ENDIAN);
    channel.position(PREFIX);
    for (int from = 0; from < count; from += AT_ONCE) {
      int facets = (int) Math.min(AT_ONCE, count - from);
      fill(channel, buffer.clear().limit(facets * FACET));
      for (int i = 0; i < facets; i++) {
        take(buffer, i, coordinates, from + i);
      }
    }
    return new StlFile(StlFile.Encoding.BINARY, Content.printable(head, HEADER), coordinates, (int) count);
  }

  private static void fill(FileChannel channel, ByteBuffer buffer) throws IOException, StlException {
    while (buffer.hasRemaining()) {
      if (channel.read(buffer) < 0) {
        throw new StlException("the file became shorter while it was read", channel.position(),
            "Read it again when nothing else writes it.");
      }
    }
  }

  private static void take(ByteBuffer buffer, int at, float[] coordinates, int facet) throws StlException {
    for (int k = 0; k < 9; k++) {
      float x = buffer.getFloat(at * FACET + CORNERS_AT + Float.BYTES * k);
      if (!Float.isFinite(x)) {
        throw notFinite(facet, Float.toString(x), size(facet) + CORNERS_AT + Float.BYTES * k);
      }
      coordinates[9 * facet + k] = x;
    }
  }

  static StlException notFinite(int facet, String value, long offset) {
    return new StlException("facet " + (facet + 1) + " has a coordinate that is no finite number: " + value, offset,
        "Repair the model and export it anew.");
  }
}
