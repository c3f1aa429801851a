package outrigger.generator.picture;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes 8-bit RGB pixels as PNG, band after band from the top: signature, header, one compressed block of rows, end.
 * Layout: ISO/IEC 15948 (PNG), from memory. Holds the compressed bytes only.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int RGB = 2;
  /** Row filter that stores the difference to the pixel on the left: flat areas become zeros. */
  private static final int SUB = 1;

  private final int width;
  private final int height;
  private final Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
  private final ByteArrayOutputStream compressed = new ByteArrayOutputStream();
  private final DeflaterOutputStream zip = new DeflaterOutputStream(compressed, deflater);
  private int rows;

  Png(int width, int height) {
    this.width = width;
    this.height = height;
  }

  /**
   * Adds rows below those added before.
   *
   * @param rgb red, green, blue of each pixel, row by row from the top; whole rows
   */
  void add(byte[] rgb) {
    byte[] row = new byte[3 * width + 1];
    row[0] = SUB;
    try {
      for (int start = 0; start < rgb.length; start += 3 * width) {
        for (int i = 0; i < 3 * width; i++) {
          row[i + 1] = (byte) (rgb[start + i] - (i < 3 ? 0 : rgb[start + i - 3]));
        }
        zip.write(row);
        rows++;
      }
    } catch (IOException e) {
      throw new AssertionError("memory does not fail to be written", e);
    }
  }

  /** The whole file; nothing can be added afterwards. */
  byte[] finish() {
    if (rows != height) {
      throw new IllegalStateException(rows + " rows were added to a picture of " + height);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      zip.finish();
      out.write(SIGNATURE);
      ByteArrayOutputStream header = new ByteArrayOutputStream();
      DataOutputStream data = new DataOutputStream(header);
      data.writeInt(width);
      data.writeInt(height);
      data.write(new byte[] {8, RGB, 0, 0, 0});
      chunk(out, "IHDR", header.toByteArray());
      chunk(out, "IDAT", compressed.toByteArray());
      chunk(out, "IEND", new byte[0]);
    } catch (IOException e) {
      throw new AssertionError("memory does not fail to be written", e);
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
