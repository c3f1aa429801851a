package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.junit.jupiter.api.Test;

/** What is compressed here is read back by Java's own zlib, which also checks the sum at the end. */
class DeflateTest {
  private static final long SEED = 20240611;

  private static byte[] inflated(byte[] zlib, int expected) throws DataFormatException {
    Inflater inflater = new Inflater();
    inflater.setInput(zlib);
    byte[] data = new byte[expected + 1];
    int length = inflater.inflate(data);
    assertTrue(inflater.finished(), "the end is read");
    assertEquals(0, inflater.getRemaining(), "nothing follows the end");
    inflater.end();
    return Arrays.copyOf(data, length);
  }

  private static void assertReadBack(byte[] data, String message) throws DataFormatException {
    assertArrayEquals(data, inflated(Deflate.zlib(data), data.length), message);
  }

  @Test
  void zlib_ofNothingAndOfAFewBytes_isReadBack() throws DataFormatException {
    for (int length = 0; length < 9; length++) {
      assertReadBack(new byte[length], length + " zeros");
    }
  }

  @Test
  void zlib_everyByteValue_isReadBack() throws DataFormatException {
    byte[] data = new byte[256];
    for (int i = 0; i < data.length; i++) {
      data[i] = (byte) i;
    }
    assertReadBack(data, "0 to 255");
  }

  /** A pattern repeated once: every length from the shortest repeat to past the longest. */
  @Test
  void zlib_everyLengthOfRepeat_isReadBack() throws DataFormatException {
    byte[] noise = new byte[300];
    new Random(SEED).nextBytes(noise);
    for (int length = 3; length <= 262; length++) {
      byte[] data = Arrays.copyOf(noise, 300 + length);
      System.arraycopy(noise, 0, data, 300, length);
      assertReadBack(data, "a repeat of " + length);
    }
  }

  /** Noise, zeros, the noise again: repeats from near to further than the window reaches. */
  @Test
  void zlib_everyKindOfDistance_isReadBack() throws DataFormatException {
    byte[] noise = new byte[16];
    new Random(SEED).nextBytes(noise);
    for (int gap = 0; gap < 40_000; gap = gap * 5 / 4 + 1) {
      byte[] data = Arrays.copyOf(noise, 32 + gap);
      System.arraycopy(noise, 0, data, 16 + gap, 16);
      assertReadBack(data, "a repeat after " + gap);
    }
    for (int gap = 32_740; gap < 32_780; gap++) {
      byte[] data = Arrays.copyOf(noise, 32 + gap);
      System.arraycopy(noise, 0, data, 16 + gap, 16);
      assertReadBack(data, "a repeat after " + gap);
    }
  }

  @Test
  void zlib_noiseOfFewValues_isReadBackAndSmaller() throws DataFormatException {
    Random random = new Random(SEED);
    byte[] data = new byte[200_000];
    for (int i = 0; i < data.length; i++) {
      data[i] = (byte) (random.nextInt(3) * 100);
    }
    assertReadBack(data, "seed " + SEED);
    assertTrue(Deflate.zlib(data).length < data.length / 2);
    assertTrue(Deflate.zlib(new byte[1_000_000]).length < 10_000);
  }
}
