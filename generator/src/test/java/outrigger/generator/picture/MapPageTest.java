package outrigger.generator.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import outrigger.generator.measure.Proven;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** The outside reader here is Java's own image library. */
class MapPageTest {
  private static final CheckedMesh BLOCK = Proven.mesh(Prism.of(Profile.rectangle(20, 20), 0, 10));

  private static byte[] map(double value) {
    double[] values = new double[BLOCK.mesh().facetCount()];
    java.util.Arrays.fill(values, value);
    FacetField field = new FacetField("wall-thickness", "mm", 0.9, true, values);
    return Pictures.map(new Shown("block", BLOCK),
        new PrintReport(PrintLimits.standard(), List.of(), List.of(), List.of(field), List.of(), Optional.empty()));
  }

  private static int redder(byte[] png) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int rgb = image.getRGB(x, y);
        count += (rgb >> 16 & 255) > 2 * (rgb & 255) + 40 ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void map_thinEverywhere_isRedWhereThickIsNot() throws IOException {
    assertTrue(redder(map(0.3)) > redder(map(3)) + 50_000);
  }

  @Test
  void apart_tagsAtOnePlace_standSideBySide() {
    List<double[]> taken = new ArrayList<>();
    assertArrayEquals(new double[] {50, 60}, MapPage.apart(new double[] {50, 60}, taken));
    double[] second = MapPage.apart(new double[] {52, 61}, taken);
    assertTrue(Math.abs(second[0] - 50) >= 20 || Math.abs(second[1] - 60) >= 20);
  }

  /** A tag moved by its width was still too near where rounding made that less, and was moved for ever. */
  @Test
  void apart_anyPlace_movesPastTheOthers() {
    assertTimeoutPreemptively(Duration.ofSeconds(30), () -> {
      for (int i = 0; i < 1000; i++) {
        List<double[]> taken = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
          double[] at = MapPage.apart(new double[] {100 + i / 7.0, 60}, taken);
          assertEquals(100 + i / 7.0 + 22 * k, at[0], 1e-9);
        }
      }
    });
  }

  @Test
  void map_twice_givesTheSameBytes() {
    assertArrayEquals(map(0.3), map(0.3));
  }

  @Test
  void words_ofAScale_nameTheLimit() {
    Scale scale = new Scale(new FacetField("wall-thickness", "mm", 0.9, true, 0.3, 0.9, 5, Double.NaN));
    assertEquals(List.of("under 0.45 mm", "0.45 to 0.9 mm (limit)", "0.9 to 1.35 mm", "1.35 to 1.8 mm",
        "1.8 mm and over"), scale.words());
    assertEquals(List.of(1, 3, 5, Hue.NONE), List.of(scale.hue(0), scale.hue(1), scale.hue(2), scale.hue(3)));
  }
}
