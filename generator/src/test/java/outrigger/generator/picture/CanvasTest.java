package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

class CanvasTest {
  private static final long SEED = 711;
  private static final int SIZE = 60;

  private static BufferedImage picture(Mark mark) throws IOException {
    Canvas canvas = new Canvas(SIZE, 0, SIZE);
    mark.draw(canvas);
    Png png = new Png(SIZE, SIZE);
    canvas.addTo(png);
    return ImageIO.read(new ByteArrayInputStream(png.bytes()));
  }

  /** Ink in whole pixels: what is missing of the paper's brightness, as a share of what ink takes. */
  private static double ink(BufferedImage image) {
    double sum = 0;
    for (int i = 0; i < SIZE * SIZE; i++) {
      sum += (0xf9 - (image.getRGB(i % SIZE, i / SIZE) >> 8 & 255)) / (double) (0xf9 - 0x2d);
    }
    return sum;
  }

  @Test
  void triangle_coversItsArea() throws IOException {
    BufferedImage image = picture(canvas -> canvas.triangle(new double[] {3.2, 5.1, 0}, new double[] {50.7, 12.4, 0},
        new double[] {20.5, 55.9, 0}, Tone.INK, Hue.NONE));
    assertEquals(((50.7 - 3.2) * (55.9 - 5.1) - (12.4 - 5.1) * (20.5 - 3.2)) / 2, ink(image), 5);
  }

  /** A square fanned from points inside it, some on the grid that pixels are tried at: no pixel is left out. */
  @Test
  void triangle_neighbours_leaveNoGap() throws IOException {
    Random random = new Random(SEED);
    double[][] rim = {{0, 0, 0}, {SIZE, 0, 0}, {SIZE, SIZE, 0}, {0, SIZE, 0}};
    for (int round = 0; round < 200; round++) {
      double step = round % 2 == 0 ? 1.0 / 6 : 1e-3;
      double[] middle = {step * random.nextInt((int) (SIZE / step)), step * random.nextInt((int) (SIZE / step)), 0};
      BufferedImage image = picture(canvas -> {
        for (int k = 0; k < 4; k += 2) {
          canvas.triangle(rim[k], rim[k + 1], middle, Tone.INK, Hue.NONE);
          canvas.triangle(middle, rim[k + 1], rim[(k + 2) % 4], Tone.INK, Hue.NONE);
        }
      });
      assertEquals(SIZE * SIZE, ink(image), 1e-9, "seed " + SEED + ", round " + round);
    }
  }

  @Test
  void triangle_behindAnother_isHiddenInEitherOrder() throws IOException {
    double[][] near = {{0, 0, 5}, {60, 0, 5}, {0, 60, 5}};
    double[][] far = {{0, 0, 1}, {60, 0, 1}, {0, 60, 1}};
    BufferedImage first = picture(canvas -> {
      canvas.triangle(near[0], near[1], near[2], 100, Hue.NONE);
      canvas.triangle(far[0], far[1], far[2], 200, Hue.NONE);
    });
    BufferedImage last = picture(canvas -> {
      canvas.triangle(far[0], far[1], far[2], 200, Hue.NONE);
      canvas.triangle(near[0], near[1], near[2], 100, Hue.NONE);
    });
    assertEquals(first.getRGB(10, 10), last.getRGB(10, 10));
    assertEquals(picture(canvas -> canvas.triangle(near[0], near[1], near[2], 100, Hue.NONE)).getRGB(10, 10), first.getRGB(10, 10));
  }

  @Test
  void triangle_outsideOrWithoutArea_drawsNothing() throws IOException {
    BufferedImage image = picture(canvas -> {
      canvas.triangle(new double[] {-9, -9, 0}, new double[] {-2, -9, 0}, new double[] {-5, -3, 0}, Tone.INK, Hue.NONE);
      canvas.triangle(new double[] {70, 70, 0}, new double[] {90, 70, 0}, new double[] {80, 99, 0}, Tone.INK, Hue.NONE);
      canvas.triangle(new double[] {1, 1, 0}, new double[] {9, 9, 0}, new double[] {20, 20, 0}, Tone.INK, Hue.NONE);
    });
    assertEquals(0, ink(image));
  }

  @Test
  void fill_loopInLoop_leavesTheInnerOne() throws IOException {
    double[] outer = {10, 10, 50, 10, 50, 50, 10, 50};
    double[] inner = {20, 20, 40, 20, 40, 40, 20, 40};
    assertEquals(1600 - 400, ink(picture(canvas -> canvas.fill(List.of(outer, inner), Tone.INK))), 1e-9);
  }

  @Test
  void line_isTwoThirdsOfAPixelThick() throws IOException {
    BufferedImage image = picture(canvas -> canvas.line(new double[] {10, 30, 0}, new double[] {50, 30, 0}, Tone.INK));
    assertEquals(40 * 2 / 3.0, ink(image), 1);
  }

  /** Bands of any height give what one piece gives. */
  @Test
  void addTo_inBands_sameBytesAsInOnePiece() {
    Profile plate = Profile.roundedRectangle(30, 20, 4).cut(Profile.hole(9));
    Mesh mesh = Mesher.mesh(Prism.of(plate, 0, 6));
    View view = new View(mesh);
    Figure figure = new Figure(mesh, view, 200 / view.width(), 10, 10);
    Mark name = Caption.of("plate", 200).about(110, 180);
    byte[] whole = inBands(220, figure, name);
    for (int band : new int[] {1, 7, 64}) {
      assertArrayEquals(whole, inBands(band, figure, name), "bands of " + band);
    }
  }

  private static byte[] inBands(int band, Mark... marks) {
    Png png = new Png(220, 220);
    for (int top = 0; top < 220; top += band) {
      Canvas canvas = new Canvas(220, top, Math.min(band, 220 - top));
      for (Mark mark : marks) {
        mark.draw(canvas);
      }
      canvas.addTo(png);
    }
    return png.bytes();
  }
}
