package outrigger.generator.accessory.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static outrigger.generator.accessory.body.BodyMountRefusalTest.params;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.accessory.Part;
import outrigger.generator.measure.MeshGauge;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/** Body mounts as the mesh has them. The default stands on a plate 11 high and 2 thick, with an M3 screw. */
class BodyMountTest {
  /** Lengths set by one coordinate come out to the grid. */
  private static final double GRID = Grid.STEP;
  /** Holes circumscribe: a pin of the stated size passes, one larger by twice the chord error does not. */
  private static final double ROUND = 0.02;

  @Test
  void build_default_hasVolumeWorkedOutByHand() {
    double flange = 4 * (24.5 * 11 - 2 * (1 - Math.PI / 4) * 2 * 2) - 24.5 * 0.4 * 0.4 / 2;
    // Foot at 14.5 - 11 tan 30; a trapezium less the flange's thickness, less two rounded corners cut by the slope.
    double foot = 14.5 - 11 * Math.tan(Math.PI / 6);
    double corners = 2 * (5.0 / 6 - Math.PI / 4) / Math.tan(Math.PI / 6);
    double gusset = 9 * 11 * ((foot + 14.5) / 2 - 4) - corners;
    double post = (9 * 9 - (4 - Math.PI)) * 24;
    double cone = Math.PI * 0.3 / 3 * (3.2 * 3.2 + 3.2 * 3.5 + 3.5 * 3.5);
    double pocket = Math.PI * 3.2 * 3.2 * 1.9 + cone - 6 * rib();
    double pushOut = Math.PI * 1.3 * 1.3 * (35 - 2.2 - (11 - 4.5 / Math.tan(Math.PI / 6)));
    double screws = 2 * 4 * (Math.PI * 1.8 * 1.8 + 1.8 * 1.8 * (1 - Math.PI / 4));
    double volume = flange + gusset + post - pocket - pushOut - screws;
    assertEquals(volume, measures("pole=none", "label=no", "post-size=9").volume(), 0.001 * volume);
  }

  /** A rib by sums over small squares: crest 0.45 wide at 3.05, flanks at 45 degrees, its top bevelled at 45. */
  private static double rib() {
    double sum = 0;
    int n = 300;
    for (int i = 0; i < n; i++) {
      double x = 3.0 + 0.2 * (i + 0.5) / n;
      for (int j = 0; j < n; j++) {
        double y = 0.6 * (j + 0.5) / n;
        double r = Math.hypot(x, y);
        if (x > 3.05 && r < 3.2 && y < 0.225 + x - 3.05) {
          sum += 2 * (1.9 - (3.2 - r)) * (0.2 / n) * (0.6 / n);
        }
      }
    }
    return sum;
  }

  @Test
  void build_default_keepsItsOverallSizes() {
    MeshGauge gauge = gauge("");
    // Rail's top 5.5 above the screws, which stand 5.5 above the flange's lower edge; head 24 above the rail.
    assertEquals(35, gauge.max(Axis.Z), GRID);
    assertEquals(0, gauge.min(Axis.Z));
    assertEquals(0, gauge.min(Axis.Y));
    assertEquals(14.5, gauge.max(Axis.Y), GRID);
    assertEquals(24.5, gauge.size(Axis.X), GRID);
  }

  /**
   * ISO 273 medium and fine holes, page "Clearance Hole Sizes - Reference Data (ISO 273)", with the printer's 0.2 hole
   * allowance. A pin of that size passes the hole on its side, and the round part of the hole is no larger.
   */
  @ParameterizedTest
  @CsvSource({"M2-socket, medium, 2.4", "M2.5-socket, medium, 2.9", "M3-socket, medium, 3.4", "M3-socket, fine, 3.2",
      "M3-socket, coarse, 3.6"})
  void build_screwHole_passesIso273(String screw, String fit, double iso273) {
    Part part = part("screw=" + screw, "fit=" + fit);
    MeshGauge gauge = gauge(part);
    double pin = gauge.pinDiameter(Axis.Y, 2, part.stated().get("post-to-screw"), 5.5);
    assertTrue(pin >= iso273 + 0.2 - GRID, "pin " + pin);
    assertEquals(iso273 + 0.2, pin, ROUND);
    assertEquals(iso273 + 0.2, part.stated().get("hole-diameter"), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"6x2, 1, glue", "6x2, 3, glue", "6x2, 2, slip", "8x3, 1, slip", "3x1, 1, glue", "10x3, 2, glue"})
  void build_pocket_measuresAsStated(String magnet, int stack, String fit) {
    Part part = part("magnet=" + magnet, "stack=" + stack, "pocket=" + fit);
    MeshGauge gauge = gauge(part);
    double top = gauge.max(Axis.Z);
    double depth = part.stated().get("pocket-depth");
    // A line beside the push-out hole and between two ribs meets the pocket's floor.
    double beside = part.stated().get("push-out-diameter") / 2 + 0.21;
    List<Double> hits = gauge.crossings(Axis.Z, beside * Math.sin(0.01), 10 + beside * Math.cos(0.01));
    assertEquals(top - depth, hits.get(hits.size() - 1), GRID);
    double grip = part.stated().get(fit.equals("glue") ? "rib-circle" : "lip-diameter");
    double held = fit.equals("glue") ? top - depth + 0.1
        : top - part.stated().get("magnet-below-head") + 0.1 + (part.stated().get("pocket-diameter") - grip) / 2 + 0.1;
    assertEquals(grip, gauge.pinDiameter(Axis.Z, held, 0, 10), ROUND);
    if (fit.equals("slip")) {
      assertEquals(part.stated().get("pocket-diameter"), gauge.pinDiameter(Axis.Z, top - depth + 0.1, 0, 10), ROUND);
    }
    assertEquals(part.stated().get("push-out-diameter"), gauge.pinDiameter(Axis.Z, top - depth - 0.1, 0, 10), ROUND);
  }

  /** The magnet with 0.2 play and the printer's 0.2 goes in a glue pocket; the lip is 0.2 smaller than the magnet. */
  @Test
  void stated_pockets_followMagnetAndPrinter() {
    assertEquals(6.4, part("").stated().get("pocket-diameter"), 1e-9);
    assertEquals(6.1, part("").stated().get("rib-circle"), 1e-9);
    assertEquals(2.2, part("").stated().get("pocket-depth"), 1e-9);
    assertEquals(6.35, part("pocket=slip").stated().get("pocket-diameter"), 1e-9);
    assertEquals(6.0, part("pocket=slip").stated().get("lip-diameter"), 1e-9);
    assertEquals(8.3, part("magnet=8x2", "printer=demo-0.25", "pocket=slip").stated().get("pocket-diameter"), 1e-9);
  }

  @Test
  void build_gluePocketWall_isRoundBetweenTheRibs() {
    MeshGauge gauge = gauge("");
    List<Double> across = gauge.crossings(Axis.X, 10.0001, 33.4);
    assertEquals(4, across.size());
    assertEquals(6.4, across.get(2) - across.get(1), ROUND);
  }

  @ParameterizedTest
  @ValueSource(strings = {"12.7", "24", "31.33", "60"})
  void build_height_isExactOnTheGrid(String height) {
    double top = gauge("height=" + height).max(Axis.Z);
    assertEquals(11 + Double.parseDouble(height), top, GRID);
  }

  @Test
  void build_heightInInches_isExactOnTheGrid() {
    assertEquals(11 + 25.4, gauge("height=1in").max(Axis.Z), GRID);
  }

  @Test
  void build_reach_isWhereThePocketStands() {
    for (String reach : List.of("8", "10", "17.25")) {
      MeshGauge gauge = gauge("reach=" + reach);
      assertEquals(6.1, gauge.pinDiameter(Axis.Z, 33.4, 0, Double.parseDouble(reach)), ROUND);
    }
  }

  @Test
  void build_twoMagnets_standSideBySide() {
    Part part = part("magnets=2");
    MeshGauge gauge = gauge(part);
    double half = part.stated().get("magnet-spacing") / 2;
    assertEquals(4, half, 1e-9);
    for (double x : new double[] {-half, half}) {
      assertEquals(6.1, gauge.pinDiameter(Axis.Z, 33.4, x, 10), ROUND);
      assertEquals(2.6, gauge.pinDiameter(Axis.Z, 20, x, 10), ROUND);
    }
  }

  @Test
  void build_leftAndRight_areMirroredAndMarksStillRead() {
    String[] given = {"screws=3", "post-place=middle", "pole=none", "label=no"};
    MeshGauge left = gauge(given);
    MeshGauge right = gauge(with(given, "side=right"));
    assertEquals(left.max(Axis.X), -right.min(Axis.X), GRID);
    assertEquals(left.min(Axis.X), -right.max(Axis.X), GRID);
    assertEquals(measures(given).volume(), measures(with(given, "side=right")).volume(), 1e-3);
    String[] marked = {"screws=3"};
    assertEquals(measures(marked).volume(), measures(with(marked, "side=right")).volume(), 1e-3);
    assertEquals(left.pinDiameter(Axis.Y, 2, -7.75, 5.5), right.pinDiameter(Axis.Y, 2, 7.75, 5.5), GRID);
  }

  @Test
  void build_postAtFront_hasAllScrewsBehind() {
    MeshGauge left = gauge("post-place=front");
    assertEquals(4.5, left.max(Axis.X), GRID);
    assertEquals(3.6, left.pinDiameter(Axis.Y, 2, -7.75, 5.5), ROUND);
    assertEquals(3.6, left.pinDiameter(Axis.Y, 2, -7.75 - 6.5, 5.5), ROUND);
    // On the right rail's outer face the truck's front is at -X; on its inner face at +X again.
    assertEquals(-4.5, gauge("post-place=front", "side=right").min(Axis.X), GRID);
    assertEquals(4.5, gauge("post-place=front", "side=right", "mounting=inboard").max(Axis.X), GRID);
  }

  @Test
  void notes_evenScrews_sayHandsAreTheSamePart() {
    assertTrue(part("").notes().get(0).contains("same part"));
    assertTrue(part("screws=3").notes().get(0).contains("other hand is another part"));
    assertTrue(part("post-place=rear").notes().get(0).contains("other hand is another part"));
  }

  /** The gusset ends a fraction of a grid step beside it: rounding there must not bend the face. */
  @Test
  void build_outerFace_isFlatToTheLastGridStep() {
    assertEquals(14.5, gauge("").max(Axis.Y));
  }

  @Test
  void build_marks_areCutFourTenthsDeepInTheOuterFace() {
    double marked = measures("").volume();
    double plain = measures("pole=none", "label=no", "post-size=9").volume();
    MeshGauge gauge = gauge("");
    double lines = (plain - marked) / 0.4;
    assertEquals(lines, gauge("pole=none", "label=no", "post-size=9").sectionArea(Axis.Y, 14.3)
        - gauge.sectionArea(Axis.Y, 14.3), 0.01);
    assertTrue(lines > 10, "engraved " + lines + " mm^2");
    assertEquals(0, gauge("pole=none", "label=no", "post-size=9").sectionArea(Axis.Y, 14.05)
        - gauge.sectionArea(Axis.Y, 14.05), 1e-3);
  }

  @Test
  void hardware_default_listsStockScrewsThatWillDo() {
    // Flange 4, web 2, nut 2.4 (ISO 4032) and one pitch of 0.5: 8.9; two diameters behind the nut: 14.4.
    assertEquals(List.of("2 x M3-socket x 10 or 12", "2 x M3 nut (ISO 4032)", "1 x 6x2 magnet"), part("").hardware());
    assertEquals("4 x 6x2 magnet", part("magnets=2", "stack=2").hardware().get(2));
  }

  @Test
  void notes_heightBetweenLayers_sayWhatComesOut() {
    String note = part("height=24.1").notes().get(2);
    assertTrue(note.contains("35.1 mm") && (note.contains("+0.100") || note.contains("-0.100")), note);
    assertTrue(part("height=24").notes().get(2).contains("exactly"));
  }

  static MeshGauge gauge(Part part) {
    return MeshGauge.of(mesh(part));
  }

  static MeshGauge gauge(String... given) {
    return gauge(part(given));
  }

  static Measures measures(String... given) {
    Proof.Verdict verdict = Proof.judge(mesh(part(given)));
    assertTrue(verdict.proven().isPresent(), () -> verdict.findings().toString());
    return verdict.measures();
  }

  static Mesh mesh(Part part) {
    return Mesher.mesh(part.solid());
  }

  static Part part(String... given) {
    BodyMountParams params = given.length == 1 && given[0].isEmpty() ? params() : params(given);
    return new BodyMount().build(params, Shelf.standard()).get(0);
  }

  private static String[] with(String[] given, String more) {
    String[] all = java.util.Arrays.copyOf(given, given.length + 1);
    all[given.length] = more;
    return all;
  }
}
