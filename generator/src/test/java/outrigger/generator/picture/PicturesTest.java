package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Pictures, read back by the Java library's own PNG reader. Part of every picture: a margin of 36 pixels. */
class PicturesTest {
  private static final int PAPER = 0xfffcf9f3;
  private static final int MARGIN = 36;
  /** What stands below a part: gap 16, a line of letters 13, margin, bar 13, margin. */
  private static final int BELOW = 16 + 13 + 36 + 13 + 36;
  private static final double ELEVATION = Math.toRadians(32);
  private static final double AZIMUTH = Math.toRadians(-52);
  /** Width that a cube of edge 1 is seen at. */
  private static final double CUBE_WIDTH = Math.cos(AZIMUTH) - Math.sin(AZIMUTH);

  private static CheckedMesh mesh(Solid solid) {
    return Proof.judge(Mesher.mesh(solid)).proven().orElseThrow();
  }

  private static Shown cube(double edge) {
    return new Shown("cube", mesh(Prism.of(Profile.rectangle(edge, edge), 0, edge)));
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  /** Brightness of a pixel, 0 to 255. */
  private static int bright(BufferedImage image, int x, int y) {
    return image.getRGB(x, y) >> 8 & 255;
  }

  private static int covered(BufferedImage image, int fromRow, int toRow) {
    int covered = 0;
    for (int y = fromRow; y < toRow; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        covered += image.getRGB(x, y) != PAPER ? 1 : 0;
      }
    }
    return covered;
  }

  @Test
  void one_twice_sameBytes() {
    assertArrayEquals(Pictures.one(cube(20)), Pictures.one(cube(20)));
  }

  /** Seen from a direction d, a cube covers the area edge^2 (|dx| + |dy| + |dz|); the outline adds half a line. */
  @Test
  void one_cube_coversItsShadow() throws IOException {
    BufferedImage image = read(Pictures.one(cube(20)));
    double scale = (image.getWidth() - 2 * MARGIN) / (20 * CUBE_WIDTH);
    double shadow = 400 * scale * scale * (Math.cos(ELEVATION) * CUBE_WIDTH + Math.sin(ELEVATION));
    assertEquals(1, covered(image, 0, image.getHeight() - BELOW) / shadow, 0.01);
    assertEquals(0, covered(image, 0, MARGIN - 1), "the margin is clear");
  }

  /** Of the three faces seen, each has its own tone: the top is lightest, the right side darkest. */
  @Test
  void one_cube_showsThreeTones() throws IOException {
    BufferedImage image = read(Pictures.one(cube(20)));
    double scale = (image.getWidth() - 2 * MARGIN) / (20 * CUBE_WIDTH);
    // The corner nearest to the eye, and from there a little along each face.
    int x = (int) (MARGIN + 20 * scale * -Math.sin(AZIMUTH));
    int y = (int) (MARGIN + 20 * scale * CUBE_WIDTH * Math.sin(ELEVATION));
    int top = bright(image, x, y - 20);
    int front = bright(image, x - 20, y + 20);
    int right = bright(image, x + 20, y + 20);
    assertTrue(top > front + 20 && front > right + 15, top + ", " + front + ", " + right);
    assertTrue(top < 245, "the top stands out from paper");
  }

  /** Outlines of round walls, where no two facets meet sharply; a line may share its pixel with paper. */
  @Test
  void one_cylinder_isOutlined() throws IOException {
    BufferedImage image = read(Pictures.one(new Shown("post", mesh(Prism.of(Profile.post(20), 0, 30)))));
    int row = (image.getHeight() - BELOW) / 2;
    for (int side : new int[] {1, -1}) {
      int rim = side > 0 ? MARGIN : image.getWidth() - 1 - MARGIN;
      int darkest = 255;
      for (int i = -1; i < 2; i++) {
        darkest = Math.min(darkest, bright(image, rim + i * side, row));
      }
      int inside = bright(image, rim + 4 * side, row);
      assertTrue(darkest < inside - 10, "rim " + darkest + ", inside " + inside);
    }
  }

  /** Along the level line through the hole's middle: paper, plate, hole, plate, paper. */
  @Test
  void one_plateWithHole_showsPaperThroughIt() throws IOException {
    Solid plate = Prism.of(Profile.rectangle(20, 20).cut(Profile.hole(12)), 0, 1);
    BufferedImage image = read(Pictures.one(new Shown("plate", mesh(plate))));
    int row = (MARGIN + image.getHeight() - BELOW) / 2;
    int changes = 0;
    for (int x = 1; x < image.getWidth(); x++) {
      changes += image.getRGB(x, row) == PAPER ^ image.getRGB(x - 1, row) == PAPER ? 1 : 0;
    }
    assertEquals(4, changes);
  }

  @Test
  void one_edgeBehindAPlate_isHidden() throws IOException {
    Solid plain = Prism.of(Profile.rectangle(20, 20), 0, 8);
    Solid hollowedBelow = plain.cut(Prism.of(Profile.rectangle(10, 10), -1, 5));
    assertArrayEquals(Pictures.one(new Shown("block", mesh(plain))), Pictures.one(new Shown("block", mesh(hollowedBelow))));
  }

  /** The bar is 1, 2 or 5 times a power of ten millimetres to the picture's scale, and never short. */
  @Test
  void one_bar_isToScale() throws IOException {
    for (double edge : new double[] {0.5, 20, 300, 1000}) {
      BufferedImage image = read(Pictures.one(cube(edge)));
      int row = image.getHeight() - MARGIN - 7;
      int end = MARGIN;
      while (image.getRGB(end + 1, row) != PAPER) {
        end++;
      }
      double scale = edge < 1 ? 40 : (image.getWidth() - 2 * MARGIN) / (edge * CUBE_WIDTH);
      double mm = (end - MARGIN) / scale;
      double digit = mm / Math.pow(10, Math.floor(Math.log10(mm * 1.02)));
      double nearest = digit < 1.5 ? 1 : digit < 3.5 ? 2 : 5;
      assertEquals(nearest, digit, 0.02 * nearest, "the bar of a part of " + edge + " mm");
      assertTrue(end - MARGIN >= 75 && end - MARGIN <= 201, "a bar of " + (end - MARGIN) + " pixels");
    }
  }

  /** A part narrower than the bar: the bar's number ends at the margin, and the margin is clear. */
  @Test
  void one_partNarrowerThanTheBar_showsAllOfBarAndNumber() throws IOException {
    BufferedImage image = read(Pictures.one(new Shown("", cube(1).mesh())));
    boolean number = false;
    for (int y = 0; y < image.getHeight(); y++) {
      number |= image.getRGB(image.getWidth() - MARGIN - 3, y) != PAPER;
      for (int x = image.getWidth() - MARGIN + 2; x < image.getWidth(); x++) {
        assertEquals(PAPER, image.getRGB(x, y), "the margin at " + x + ", " + y);
      }
    }
    assertTrue(number, "the number ends at the margin");
  }

  @Test
  void one_hugeAndTinyParts_stayWithinBounds() throws IOException {
    BufferedImage huge = read(Pictures.one(cube(1000)));
    assertTrue(huge.getWidth() <= 900 && huge.getHeight() < 1200, huge.getWidth() + " x " + huge.getHeight());
    BufferedImage tiny = read(Pictures.one(cube(0.1)));
    assertTrue(tiny.getWidth() > 200 && tiny.getWidth() < 400, "the bar and its length fit");
    BufferedImage tall = read(Pictures.one(new Shown("mast", mesh(Prism.of(Profile.rectangle(2, 2), 0, 1000)))));
    assertTrue(tall.getHeight() <= 900 + BELOW, "height " + tall.getHeight());
  }

  @Test
  void one_nameLongerThanThePicture_isBrokenIntoLines() throws IOException {
    BufferedImage plain = read(Pictures.one(cube(5)));
    for (String name : List.of("w".repeat(100), "bracket-".repeat(12) + "end")) {
      BufferedImage image = read(Pictures.one(new Shown(name, cube(5).mesh())));
      assertTrue(image.getWidth() <= 900, "width " + image.getWidth());
      assertTrue(image.getHeight() > plain.getHeight() + 3 * 20, "height " + image.getHeight());
    }
  }

  @Test
  void one_nameOutsideTheLetters_isWrittenWithDashes() {
    CheckedMesh mesh = cube(5).mesh();
    assertArrayEquals(Pictures.one(new Shown("GR--E-1", mesh)), Pictures.one(new Shown("gr\u00f6\u00dfe_1", mesh)));
  }

  @Test
  void one_withoutName_isDrawn() throws IOException {
    assertTrue(read(Pictures.one(new Shown("", cube(5).mesh()))).getHeight() > 100);
  }

  @Test
  void sheet_manyParts_breaksIntoRowsOfTheSameScale() throws IOException {
    BufferedImage many = read(Pictures.sheet(Collections.nCopies(12, cube(20))));
    assertTrue(many.getWidth() <= 1500);
    int rows = 0;
    boolean wasClear = true;
    for (int y = 0; y < many.getHeight(); y++) {
      boolean clear = covered(many, y, y + 1) == 0;
      rows += wasClear && !clear ? 1 : 0;
      wasClear = clear;
    }
    assertTrue(rows >= 2 * 2 + 1, "parts, names, parts, names, bar: " + rows);
  }

  /** However many there are, each stays large enough to be told from the next. */
  @Test
  void sheet_hundredsOfParts_growsLonger() throws IOException {
    BufferedImage many = read(Pictures.sheet(Collections.nCopies(300, cube(20))));
    assertTrue(many.getWidth() <= 1500);
    assertTrue(many.getHeight() > 300 / 9 * 120, "height " + many.getHeight());
  }

  @Test
  void sheet_ofNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Pictures.sheet(List.of()));
  }

  /** A bar 20 mm wide whose top goes up and down at 45 degrees. */
  private static Shown washboard(double pitch) {
    int teeth = (int) Math.round(20 / pitch);
    double[] xy = new double[4 * teeth + 6];
    int n = 0;
    for (int i = 0; i <= 2 * teeth; i++) {
      xy[n++] = 20 - i * pitch / 2;
      xy[n++] = 10 + (i % 2) * pitch / 2;
    }
    xy[n++] = 0;
    xy[n++] = 0;
    xy[n++] = 20;
    xy[n++] = 0;
    return new Shown("washboard", mesh(Prism.of(Profile.polygon(xy), 0, 20).turn(Axis.X, 90)));
  }

  private static double dark(Shown part) throws IOException {
    BufferedImage image = read(Pictures.one(part));
    int dark = 0;
    for (int y = 0; y < image.getHeight() - BELOW; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        dark += bright(image, x, y) < 100 ? 1 : 0;
      }
    }
    return (double) dark / covered(image, 0, image.getHeight() - BELOW);
  }

  /** Creases nearer to each other than two lines are wide would hide all that lies between. */
  @Test
  void of_creasesCloseTogether_leaveTheSurfaceToBeSeen() throws IOException {
    double coarse = dark(washboard(2));
    double fine = dark(washboard(0.1));
    assertTrue(coarse > 0.005, coarse + " of a coarse one is lines");
    assertTrue(fine < 2 * coarse, fine + " of a fine one is lines");
  }
}
