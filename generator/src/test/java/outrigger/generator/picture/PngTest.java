package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngTest {
  private static final int WIDTH = 7;
  private static final int HEIGHT = 5;

  private static byte[] pixels() {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    new Random(5).nextBytes(rgb);
    return rgb;
  }

  @Test
  void finish_pixels_areReadBackByTheJavaLibrary() throws IOException {
    byte[] rgb = pixels();
    Png png = new Png(WIDTH, HEIGHT);
    png.add(rgb);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.finish()));
    assertEquals(WIDTH, image.getWidth());
    assertEquals(HEIGHT, image.getHeight());
    for (int i = 0; i < WIDTH * HEIGHT; i++) {
      int expected = 0xff000000 | (rgb[3 * i] & 255) << 16 | (rgb[3 * i + 1] & 255) << 8 | rgb[3 * i + 2] & 255;
      assertEquals(expected, image.getRGB(i % WIDTH, i / WIDTH), "pixel " + i);
    }
  }

  @Test
  void finish_pixelsInBands_sameBytesAsAtOnce() {
    Png whole = new Png(WIDTH, HEIGHT);
    whole.add(pixels());
    Png bands = new Png(WIDTH, HEIGHT);
    bands.add(Arrays.copyOfRange(pixels(), 0, 3 * WIDTH * 2));
    bands.add(Arrays.copyOfRange(pixels(), 3 * WIDTH * 2, 3 * WIDTH * HEIGHT));
    assertArrayEquals(whole.finish(), bands.finish());
  }

  @Test
  void finish_rowsMissing_isRefused() {
    assertThrows(IllegalStateException.class, new Png(WIDTH, HEIGHT)::finish);
  }
}
