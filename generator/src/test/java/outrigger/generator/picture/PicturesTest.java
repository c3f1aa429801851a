package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Pictures, read back by the Java library's own PNG reader. */
class PicturesTest {
  private static final int PAPER = 0xfffaf8f3;

  private static CheckedMesh mesh(Solid solid) {
    return Proof.judge(Mesher.mesh(solid)).proven().orElseThrow();
  }

  private static Shown cube(double edge) {
    return new Shown("cube", mesh(Prism.of(Profile.rectangle(edge, edge), 0, edge)));
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void one_twice_sameBytes() {
    assertArrayEquals(Pictures.one(cube(20)), Pictures.one(cube(20)));
  }

  /**
   * Seen from a direction d, a cube's shadow has the area edge^2 (|dx| + |dy| + |dz|); text, bar and the rim's own
   * thickness add a little.
   */
  @Test
  void one_cube_coversItsShadow() throws IOException {
    BufferedImage image = read(Pictures.one(cube(20)));
    double elevation = Math.toRadians(32);
    double azimuth = Math.toRadians(-52);
    double shadow = Math.cos(elevation) * (Math.cos(azimuth) - Math.sin(azimuth)) + Math.sin(elevation);
    double scale = (image.getWidth() - 72) / (20 * (Math.cos(azimuth) - Math.sin(azimuth)));
    int covered = 0;
    for (int y = 0; y < image.getHeight() - 100; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        covered += image.getRGB(x, y) != PAPER ? 1 : 0;
      }
    }
    assertEquals(1, covered / (400 * scale * scale * shadow), 0.03);
  }

  /** The longest run of ink in the row of the bar, which lies one margin above the lower edge. */
  private static int barPixels(BufferedImage image) {
    int longest = 0;
    int run = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      run = image.getRGB(x, image.getHeight() - 36) == PAPER ? 0 : run + 1;
      longest = Math.max(longest, run);
    }
    return longest;
  }

  @Test
  void one_cube_barIsTenMillimetresToScale() throws IOException {
    BufferedImage image = read(Pictures.one(cube(20)));
    double azimuth = Math.toRadians(-52);
    double scale = (image.getWidth() - 72) / (20 * (Math.cos(azimuth) - Math.sin(azimuth)));
    assertEquals(10 * scale, barPixels(image), 3);
  }

  @Test
  void one_partNarrowerThanTheBar_showsAllOfBarAndNumber() throws IOException {
    BufferedImage image = read(Pictures.one(cube(4)));
    assertEquals(240, barPixels(image), 3);
    boolean number = false;
    for (int y = 0; y < image.getHeight(); y++) {
      number |= image.getRGB(image.getWidth() - 36 - 8, y) != PAPER;
      for (int x = image.getWidth() - 34; x < image.getWidth(); x++) {
        assertEquals(PAPER, image.getRGB(x, y), "the margin at " + x + ", " + y);
      }
    }
    assertTrue(number, "the number ends at the margin");
  }

  @Test
  void sheet_partsDrawnVerySmall_takeTheLongerBar() throws IOException {
    BufferedImage image = read(Pictures.sheet(java.util.Collections.nCopies(6, cube(900))));
    assertTrue(barPixels(image) >= 20, "the bar has " + barPixels(image) + " pixels");
  }

  @Test
  void one_cube_topFrontAndRightTellApart() throws IOException {
    BufferedImage image = read(Pictures.one(cube(20)));
    int lower = image.getHeight() - 140;
    int top = red(image, image.getWidth() / 2, 100);
    int front = red(image, image.getWidth() / 2 - 150, lower / 2 + 60);
    int right = red(image, image.getWidth() / 2 + 200, lower / 2 + 60);
    assertTrue(top - front >= 25 && front - right >= 20, "top " + top + ", front " + front + ", right " + right);
  }

  private static int red(BufferedImage image, int x, int y) {
    return image.getRGB(x, y) >> 16 & 255;
  }

  @Test
  void one_plateWithHole_showsPaperThroughIt() throws IOException {
    Solid plate = Prism.of(Profile.rectangle(20, 20).cut(Profile.hole(12)), 0, 1);
    BufferedImage image = read(Pictures.one(new Shown("plate", mesh(plate))));
    int row = (image.getHeight() - 120) / 2 + 20;
    int changes = 0;
    for (int x = 1; x < image.getWidth(); x++) {
      changes += image.getRGB(x, row) == PAPER ^ image.getRGB(x - 1, row) == PAPER ? 1 : 0;
    }
    assertTrue(changes >= 4, "the row changes between paper and plate " + changes + " times");
  }

  @Test
  void sheet_manyParts_breaksIntoRows() throws IOException {
    BufferedImage one = read(Pictures.sheet(List.of(cube(20))));
    BufferedImage many = read(Pictures.sheet(java.util.Collections.nCopies(12, cube(20))));
    assertTrue(many.getWidth() <= 1500);
    assertTrue(many.getHeight() > 2 * 100 && one.getHeight() > 0);
  }

  @Test
  void one_hugeAndTinyParts_stayWithinBounds() throws IOException {
    BufferedImage huge = read(Pictures.one(cube(1000)));
    assertTrue(huge.getWidth() <= 900 && huge.getHeight() < 2000);
    assertTrue(read(Pictures.one(cube(0.1))).getWidth() > 0);
  }

  @Test
  void one_nameOutsideTheLetters_isWrittenWithDashes() {
    assertTrue(Pictures.one(new Shown("größe_1", cube(5).mesh())).length > 0);
  }

  @Test
  void sheet_ofNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Pictures.sheet(List.of()));
  }
}
