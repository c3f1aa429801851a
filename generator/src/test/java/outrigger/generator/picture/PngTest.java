package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngTest {
  private static final int WIDTH = 7;
  private static final int HEIGHT = 5;
  private static final long SEED = 5;

  private static Png picture(byte[] tones) {
    Png png = new Png(WIDTH, HEIGHT);
    for (int y = 0; y < HEIGHT; y++) {
      png.row(Arrays.copyOfRange(tones, y * WIDTH, (y + 1) * WIDTH));
    }
    return png;
  }

  /** Each pixel has its tone's colour: ink is darkest, paper lightest, and every tone between lighter than the last. */
  @Test
  void bytes_pixels_areReadBackByTheJavaLibrary() throws IOException {
    byte[] tones = new byte[WIDTH * HEIGHT];
    new Random(SEED).nextBytes(tones);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture(tones).bytes()));
    assertEquals(WIDTH, image.getWidth());
    assertEquals(HEIGHT, image.getHeight());
    byte[] palette = Tone.palette();
    for (int i = 0; i < WIDTH * HEIGHT; i++) {
      int at = 3 * (tones[i] & 255);
      int expected = 0xff000000 | (palette[at] & 255) << 16 | (palette[at + 1] & 255) << 8 | palette[at + 2] & 255;
      assertEquals(expected, image.getRGB(i % WIDTH, i / WIDTH), "seed " + SEED + ", pixel " + i);
    }
  }

  @Test
  void palette_growsLighterFromInkToPaper() {
    byte[] palette = Tone.palette();
    for (int i = 3; i < palette.length; i++) {
      int step = (palette[i] & 255) - (palette[i - 3] & 255);
      assertTrue(step == 0 || step == 1, "tone " + i / 3);
    }
    assertEquals(0xf9, palette[3 * Tone.PAPER + 1] & 255);
    assertEquals(0x2d, palette[3 * Tone.INK + 1] & 255);
  }

  /** Width and height stand 16 bytes in; the reader above checks the rest. */
  @Test
  void bytes_holdSizeAndNoDate() {
    byte[] file = picture(new byte[WIDTH * HEIGHT]).bytes();
    assertEquals(WIDTH, ByteBuffer.wrap(file).getInt(16));
    assertEquals(HEIGHT, ByteBuffer.wrap(file).getInt(20));
    assertFalse(new String(file, StandardCharsets.ISO_8859_1).contains("tIME"));
  }

  @Test
  void bytes_rowsMissing_isRefused() {
    assertThrows(IllegalStateException.class, new Png(WIDTH, HEIGHT)::bytes);
  }
}
