package outrigger.generator.picture;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.Adler32;

/**
 * Compresses bytes to the zlib format (RFC 1950) by the deflate method (RFC 1951), in one block of the fixed code.
 *
 * <p>Java's own compressor uses the zlib of the machine, and those differ in what they write; a picture has to be the
 * same bytes everywhere. Pictures repeat themselves so much that the plainer code costs little.
 */
final class Deflate {
  private static final int WINDOW = 1 << 15;
  private static final int SHORTEST = 4;
  private static final int LONGEST = 258;
  /** Earlier places tried for a repeat, the latest first. */
  private static final int TRIES = 24;
  private static final int HASH_BITS = 15;
  private static final int END = 256;
  /** Least length and least distance of each code, and the bits that say how much more: RFC 1951, section 3.2.5. */
  private static final int[] LENGTHS = {3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83,
      99, 115, 131, 163, 195, 227, 258};
  private static final int[] DISTANCES = {1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769,
      1025, 1537, 2049, 3073, 4097, 6145, 8193, 12289, 16385, 24577};

  private final byte[] data;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final int[] newest = new int[1 << HASH_BITS];
  private final int[] before = new int[WINDOW];
  private int pending;
  private int pendingBits;
  private int length;
  private int distance;

  private Deflate(byte[] data) {
    this.data = data;
    Arrays.fill(newest, -1);
  }

  static byte[] zlib(byte[] data) {
    return new Deflate(data).run();
  }

  private byte[] run() {
    out.write(0x78);
    out.write(0x01);
    bits(0b011, 3);
    for (int at = 0; at < data.length; at += length) {
      findRepeat(at);
      if (length >= SHORTEST) {
        repeat();
      } else {
        length = 1;
        symbol(data[at] & 255);
      }
      for (int i = at; i < at + length; i++) {
        remember(i);
      }
    }
    symbol(END);
    bits(0, 7);
    Adler32 sum = new Adler32();
    sum.update(data);
    for (int shift = 24; shift >= 0; shift -= 8) {
      out.write((int) (sum.getValue() >> shift));
    }
    return out.toByteArray();
  }

  /** Looks for the longest earlier run of the bytes from here on, the nearest of equals. */
  private void findRepeat(int at) {
    length = 0;
    int most = Math.min(LONGEST, data.length - at);
    int earlier = most < SHORTEST ? -1 : newest[hash(at)];
    for (int tries = 0; tries < TRIES && earlier >= 0 && at - earlier < WINDOW && length < most; tries++) {
      int same = Arrays.mismatch(data, earlier, earlier + most, data, at, at + most);
      same = same < 0 ? most : same;
      if (same > length) {
        length = same;
        distance = at - earlier;
      }
      earlier = before[earlier % WINDOW];
    }
  }

  private void remember(int at) {
    if (at + SHORTEST <= data.length) {
      int hash = hash(at);
      before[at % WINDOW] = newest[hash];
      newest[hash] = at;
    }
  }

  private int hash(int at) {
    int four = data[at] & 255 | (data[at + 1] & 255) << 8 | (data[at + 2] & 255) << 16 | data[at + 3] << 24;
    return four * 0x9e3779b1 >>> 32 - HASH_BITS;
  }

  private void repeat() {
    int code = code(LENGTHS, length);
    symbol(END + 1 + code);
    bits(length - LENGTHS[code], code == LENGTHS.length - 1 ? 0 : Math.max(0, code / 4 - 1));
    code = code(DISTANCES, distance);
    bits(Integer.reverse(code) >>> 27, 5);
    bits(distance - DISTANCES[code], Math.max(0, code / 2 - 1));
  }

  private static int code(int[] least, int value) {
    int found = Arrays.binarySearch(least, value);
    return found >= 0 ? found : -found - 2;
  }

  /** A byte, the end or a length in the fixed code: RFC 1951, section 3.2.6. Codes run from their highest bit. */
  private void symbol(int symbol) {
    if (symbol < 144) {
      code(0b00110000 + symbol, 8);
    } else if (symbol < 256) {
      code(0b110010000 + symbol - 144, 9);
    } else if (symbol < 280) {
      code(symbol - 256, 7);
    } else {
      code(0b11000000 + symbol - 280, 8);
    }
  }

  private void code(int code, int count) {
    bits(Integer.reverse(code) >>> 32 - count, count);
  }

  /** Bits fill bytes from the lowest up. */
  private void bits(int bits, int count) {
    pending |= bits << pendingBits;
    pendingBits += count;
    while (pendingBits >= 8) {
      out.write(pending);
      pending >>>= 8;
      pendingBits -= 8;
    }
  }
}
