package outrigger.generator.picture;

/** Colours that lie over the tones of a map, from the worst to the best, each lighter than the one before. */
final class Hue {
  /** No colour: the tone alone. */
  static final int NONE = 0;
  /** How many colours there are; they are numbered from 1. */
  static final int COUNT = 5;

  /** Neighbours differ in lightness, so that they are told apart without colour too. */
  private static final int[][] RGB = {{0xfc, 0xf9, 0xf3}, {0xa5, 0x1d, 0x2d}, {0xf0, 0x7c, 0x1e}, {0xf6, 0xd0, 0x55},
      {0x9e, 0xcf, 0xb5}, {0xcf, 0xe6, 0xf2}};
  private static final int[] INK_RGB = {0x36, 0x2d, 0x24};
  private static final int TONES = 32;
  private static final int PER_TONE = 256 / TONES;
  private static final int COLOURS = 256;

  private Hue() {}

  /** Place in the palette. */
  static int index(int tone, int hue) {
    return hue * TONES + tone / PER_TONE;
  }

  /** Red, green and blue: tones of each colour from ink to the full one. */
  static byte[] palette() {
    byte[] palette = new byte[3 * COLOURS];
    for (int hue = 0; hue < RGB.length; hue++) {
      for (int tone = 0; tone < TONES; tone++) {
        for (int k = 0; k < 3; k++) {
          int mixed = (INK_RGB[k] * (TONES - 1 - tone) + RGB[hue][k] * tone) / (TONES - 1);
          palette[3 * (hue * TONES + tone) + k] = (byte) mixed;
        }
      }
    }
    return palette;
  }
}
