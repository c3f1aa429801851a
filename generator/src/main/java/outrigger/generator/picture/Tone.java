package outrigger.generator.picture;

/** Tones from ink, 0, to paper, 255: a picture is drawn in one warm grey, so that a palette of 256 holds it. */
final class Tone {
  static final int INK = 0;
  static final int PAPER = 255;
  /** Of the creases and outlines of parts. */
  static final int LINE = 38;

  private static final int[] INK_RGB = {0x36, 0x2d, 0x24};
  private static final int[] PAPER_RGB = {0xfc, 0xf9, 0xf3};
  /** What a facet shows that looks straight into both lights, and what one in the dark does. */
  private static final double BRIGHT = 243;
  private static final double DARK = 104;
  private static final double KEY = 112;
  private static final double FILL = 46;
  private static final double[] KEY_LIGHT = Vectors.unit(-0.05, -0.5, 1);
  private static final double[] FILL_LIGHT = Vectors.unit(0.9, -0.45, 0.35);

  private Tone() {}

  /** Of a facet, by how its unit normal stands to a high light from the front and a weaker one from the right. */
  static int of(double[] normal) {
    double light = KEY * Math.max(0, Vectors.dot(normal, KEY_LIGHT))
        + FILL * Math.max(0, Vectors.dot(normal, FILL_LIGHT));
    return (int) Math.min(BRIGHT, DARK + light);
  }

  /** Red, green and blue of every tone. */
  static byte[] palette() {
    byte[] palette = new byte[3 * 256];
    for (int i = 0; i < palette.length; i++) {
      int channel = i % 3;
      int share = i / 3;
      palette[i] = (byte) ((INK_RGB[channel] * (PAPER - share) + PAPER_RGB[channel] * share + PAPER / 2) / PAPER);
    }
    return palette;
  }
}
