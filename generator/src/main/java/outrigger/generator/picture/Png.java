package outrigger.generator.picture;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes 8-bit RGB pixels as PNG: signature, header, one compressed block of rows, end. Layout: ISO/IEC 15948 (PNG),
 * from memory.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int RGB = 2;
  /** Row filter that stores the difference to the pixel on the left: flat areas become zeros. */
  private static final int SUB = 1;

  private Png() {}

  /**
   * Encodes an image.
   *
   * @param rgb red, green, blue of each pixel, row by row from the top
   */
  static byte[] encode(int width, int height, byte[] rgb) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(SIGNATURE);
      ByteArrayOutputStream header = new ByteArrayOutputStream();
      DataOutputStream data = new DataOutputStream(header);
      data.writeInt(width);
      data.writeInt(height);
      data.write(new byte[] {8, RGB, 0, 0, 0});
      chunk(out, "IHDR", header.toByteArray());
      chunk(out, "IDAT", compressed(width, height, rgb));
      chunk(out, "IEND", new byte[0]);
      return out.toByteArray();
    } catch (IOException e) {
      throw new AssertionError("memory does not fail to be written", e);
    }
  }

  private static byte[] compressed(int width, int height, byte[] rgb) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    try (DeflaterOutputStream zip = new DeflaterOutputStream(out, deflater)) {
      byte[] row = new byte[3 * width + 1];
      row[0] = SUB;
      for (int y = 0; y < height; y++) {
        for (int i = 0; i < 3 * width; i++) {
          int at = 3 * width * y + i;
          row[i + 1] = (byte) (rgb[at] - (i < 3 ? 0 : rgb[at - 3]));
        }
        zip.write(row);
      }
    } finally {
      deflater.end();
    }
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] content) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(content);
    DataOutputStream data = new DataOutputStream(out);
    data.writeInt(content.length);
    data.write(name);
    data.write(content);
    data.writeInt((int) crc.getValue());
  }
}
