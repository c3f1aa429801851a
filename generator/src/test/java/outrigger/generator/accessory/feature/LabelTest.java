package outrigger.generator.accessory.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.measure.Proven;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

class LabelTest {
  private static final Printer PRINTER = Shelf.standard().get(Printer.class, "demo-0.4");
  private static final Solid PLATE = Prism.of(Profile.rectangle(30, 12), 0, 3);

  @ParameterizedTest
  @CsvSource({"4.2, 10, 8", "4.2, 5, 8", "12.75, 9, 3", "HEIGHT 35, 24, 4", "1, 3, 6", "8, 60, 60"})
  void fit_anyArea_staysWithin(String text, double width, double height) {
    Label label = Label.fit(text, width, height, PRINTER, "label");
    assertTrue(label.profile().maxX() <= width / 2 + Grid.STEP && label.profile().minX() >= -width / 2 - Grid.STEP);
    assertTrue(label.profile().maxY() <= height / 2 + Grid.STEP && label.profile().minY() >= -height / 2 - Grid.STEP);
    assertTrue(label.stroke() >= 0.4 && label.stroke() <= 0.8, "stroke " + label.stroke());
    assertTrue(label.capital() >= 4 * label.stroke(), "capital " + label.capital());
  }

  @Test
  void fit_plentyOfRoom_usesTwoBeadsUpToTheWidest() {
    // Two beads of 0.45 are more than the widest stroke of 0.8; capitals stop at 6.
    Label label = Label.fit("4.2", 60, 60, PRINTER, "label");
    assertEquals(0.8, label.stroke());
    assertEquals(6, label.capital(), 1e-9);
  }

  @Test
  void fit_noRoom_isRefusedWithTheRoomItNeeds() {
    BadDimension refusal = assertThrows(BadDimension.class, () -> Label.fit("4.2", 3, 8, PRINTER, "engrave"));
    assertEquals("engrave", refusal.parameter());
    assertTrue(refusal.what().matches("the label \"4.2\" takes at least [0-9.]+ x 2.43 mm, but there is room for 3 x 8 "
        + "mm"), refusal.what());
  }

  @Test
  void fit_letterMissing_isRefused() {
    BadDimension refusal = assertThrows(BadDimension.class, () -> Label.fit("4@2", 20, 8, PRINTER, "label"));
    assertTrue(refusal.what().contains("'@'"), refusal.what());
  }

  @Test
  void engraveTop_plate_isAsDeepAsAsked() {
    Label label = Label.fit("1", 10, 6, PRINTER, "label");
    MeshGauge gauge = Proven.gauge(PLATE.cut(label.engraveTop(3, 0.4)));
    assertEquals(30 * 12 * 3 - label.profile().area() * 0.4, volume(PLATE.cut(label.engraveTop(3, 0.4))), 1e-3);
    assertEquals(30 * 12 - label.profile().area(), gauge.sectionArea(Axis.Z, 2.7), 1e-6);
    assertEquals(30 * 12, gauge.sectionArea(Axis.Z, 2.5), 1e-6);
  }

  @Test
  void engraveBottom_plate_isMirrored() {
    Label label = Label.fit("L", 10, 6, PRINTER, "label");
    MeshGauge top = Proven.gauge(PLATE.cut(label.engraveTop(3, 0.4)));
    MeshGauge bottom = Proven.gauge(PLATE.cut(label.engraveBottom(0, 0.4)));
    // The stem of an L stands left seen from its face: at -x from above, at +x from below.
    double x = label.profile().minX() + label.stroke() / 2;
    assertEquals(2.6, top.crossings(Axis.Z, x, 0.013).get(1), Grid.STEP);
    assertEquals(0.4, bottom.crossings(Axis.Z, -x, 0.013).get(0), Grid.STEP);
  }

  private static double volume(Solid solid) {
    return Proven.mesh(solid).measures().volume();
  }
}
