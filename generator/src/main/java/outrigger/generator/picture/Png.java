package outrigger.generator.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * A picture as PNG, filled from the top: signature, header, palette of the tones, one compressed block of rows, end.
 * Layout: ISO/IEC 15948 (PNG). It holds no date and no text.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final byte BITS = 8;
  private static final byte PALETTE = 3;

  private final int width;
  private final int height;
  private final byte[] rows;
  private final boolean coloured;
  private int at;

  /** A picture in tones without rows yet. */
  Png(int width, int height) {
    this(width, height, false);
  }

  /** A picture without rows yet, in tones alone or in colours too, which leave fewer tones. */
  Png(int width, int height, boolean coloured) {
    this.coloured = coloured;
    this.width = width;
    this.height = height;
    rows = new byte[Math.multiplyExact(height, width + 1)];
  }

  /** What a pixel of a tone and a colour is in the picture's palette. */
  int colour(int tone, int hue) {
    return coloured ? Hue.index(tone, hue) : tone;
  }

  /** Adds the next row below, the tones of its pixels; before each row stands that it is not filtered. */
  void row(byte[] tones) {
    System.arraycopy(tones, 0, rows, at + 1, width);
    at += width + 1;
  }

  /** The file. */
  byte[] bytes() {
    if (at != rows.length) {
      throw new IllegalStateException("a picture of " + at / (width + 1) + " rows of " + height);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put(BITS).put(PALETTE).array());
    chunk(out, "PLTE", coloured ? Hue.palette() : Tone.palette());
    chunk(out, "IDAT", Deflate.zlib(rows));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] content) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    out.writeBytes(name);
    out.writeBytes(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}
