package outrigger.generator.accessory.spacer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.accessory.Part;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.measure.Proven;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/** Spacers as the mesh has them. The default is 30 x 12 x 4.2 with corners of 2 and two M3 medium holes 18 apart. */
class SpacerTest {
  private static final double GRID = Grid.STEP;
  private static final double ROUND = 0.02;

  static List<Part> parts(String given) {
    String[] pairs = given.isBlank() ? new String[0] : given.replace('=', ' ').strip().split(" +");
    SpacerParams params = ParamValues.record(SpacerParams.class, Shelf.standard(), pairs);
    return new Spacer().build(params, Shelf.standard());
  }

  private static Part part(String given) {
    return parts(given).get(0);
  }

  private static MeshGauge gauge(String given) {
    return Proven.gauge(part(given).solid());
  }

  private static Measures measures(String given) {
    return Proven.mesh(part(given).solid()).measures();
  }

  /** Area of a regular polygon whose flats touch the circle. */
  private static double hole(double diameter, int sides) {
    return sides * diameter * diameter / 4 * Math.tan(Math.PI / sides);
  }

  /** What n straight chords take off one rounded corner of a square: the square less a fan of triangles. */
  private static double corner(double radius, int chords) {
    return radius * radius * (1 - chords * Math.sin(Math.PI / 2 / chords) / 2);
  }

  @Test
  void build_default_hasVolumeWorkedOutByHand() {
    // Chord error 0.01: a corner of radius 2 takes 8 chords a quarter, a hole of 3.6 takes 32 sides.
    double area = 30 * 12 - 4 * corner(2, 8) - 2 * hole(3.6, 32);
    Measures m = measures("");
    assertEquals(4.2 * area, m.volume(), 0.0005 * m.volume());
    assertEquals(2, m.genus());
    assertEquals(1, m.pieces());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 1, 1.5875, 2.54, 4.2, 3.3333, 12.7, 100})
  void build_anyThickness_isExactToAGridStep(double thickness) {
    MeshGauge gauge = gauge("thickness=" + thickness);
    assertEquals(0, gauge.min(Axis.Z));
    assertEquals(thickness, gauge.max(Axis.Z), GRID);
    assertEquals(30, gauge.size(Axis.X), GRID);
    assertEquals(12, gauge.size(Axis.Y), GRID);
  }

  @Test
  void build_inches_areExact() {
    assertEquals(1.5875, gauge("thickness=0.0625in").max(Axis.Z), GRID);
    assertEquals(1.016, gauge("thickness=40thou").max(Axis.Z), GRID);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.5875, 4.2})
  void build_onEdge_hasThicknessAcrossTheBed(double thickness) {
    MeshGauge gauge = gauge("pose=on-edge width=11.11 thickness=" + thickness);
    assertEquals(0, gauge.min(Axis.Z));
    assertEquals(11.11, gauge.max(Axis.Z), GRID);
    assertEquals(thickness, gauge.size(Axis.Y), GRID);
  }

  /** ISO 273 medium and fine, page "Clearance Hole Sizes - Reference Data (ISO 273)", with 0.2 hole allowance. */
  @ParameterizedTest
  @CsvSource({"M2-socket, medium, 2.4", "M2-socket, fine, 2.2", "M2.5-socket, medium, 2.9", "M3-socket, medium, 3.4"})
  void build_holes_passIso273AtThePitch(String screw, String fit, double iso273) {
    MeshGauge gauge = gauge("screw=" + screw + " fit=" + fit);
    for (double x : new double[] {-9, 9}) {
      double pin = gauge.pinDiameter(Axis.Z, 2, x, 0);
      assertTrue(pin >= iso273 + 0.2 - GRID, "pin " + pin);
      assertEquals(iso273 + 0.2, pin, ROUND);
    }
  }

  @Test
  void build_twoRows_standOnTheRectangle() {
    MeshGauge gauge = gauge("rows=2 row-pitch=9 width=20");
    for (double x : new double[] {-9, 9}) {
      for (double y : new double[] {-4.5, 4.5}) {
        assertEquals(3.6, gauge.pinDiameter(Axis.Z, 2, x, y), ROUND);
      }
    }
    assertEquals(4, measures("rows=2 row-pitch=9 width=20").genus());
  }

  @Test
  void build_oddRow_hasOneHoleInTheMiddle() {
    MeshGauge gauge = gauge("holes=3 pitch=10");
    for (double x : new double[] {-10, 0, 10}) {
      assertEquals(3.6, gauge.pinDiameter(Axis.Z, 2, x, 0), ROUND);
    }
  }

  @Test
  void build_slots_letTheScrewShift() {
    MeshGauge gauge = gauge("slot=4");
    for (double shift : new double[] {-2, 0, 2}) {
      assertEquals(3.6, gauge.pinDiameter(Axis.Z, 2, 9 + shift, 0), ROUND);
    }
  }

  /** ISO 4762 M3 head 5.5 x 3.0, page "Socket Head Cap Screws (ISO 4762 / DIN 912) - Dimensions & Specifications". */
  @ParameterizedTest
  @ValueSource(strings = {"", " slot=1", " bed-chamfer=0.4", " pose=on-edge"})
  void build_counterbore_takesIso4762Head(String more) {
    Part part = part("head-seat=counterbore thickness=6" + more);
    MeshGauge gauge = Proven.gauge(part.solid());
    boolean edge = more.contains("edge");
    // On edge the upper face looks towards -Y.
    double pin = edge ? gauge.pinDiameter(Axis.Y, -5, 9, 6) : gauge.pinDiameter(Axis.Z, 5, 9, 0);
    assertTrue(pin >= 5.5 + 0.4 + 0.2 - GRID, "pin " + pin);
    assertEquals(part.stated().get("counterbore-diameter"), pin, ROUND);
    assertEquals(3.2, part.stated().get("counterbore-depth"), 1e-9);
    double bore = edge ? gauge.pinDiameter(Axis.Y, -1, 9, 6) : gauge.pinDiameter(Axis.Z, 1, 9, 0);
    assertEquals(3.6, bore, ROUND);
  }

  /** ISO 7089 M3 washer 7.0 x 0.5, page "M1.6 Flat Washers - Dimensional Row (ISO 7089)". */
  @Test
  void build_washerSeat_takesIso7089WasherUnderTheHead() {
    Part part = part("head-seat=washer thickness=6 pitch=16");
    double pin = Proven.gauge(part.solid()).pinDiameter(Axis.Z, 5, 8, 0);
    assertTrue(pin >= 7 + 0.4 + 0.2 - GRID, "pin " + pin);
    assertEquals(3.0 + 0.5 + 0.2, part.stated().get("counterbore-depth"), 1e-9);
    assertEquals(List.of("2 x M3-socket x 10 or 12", "2 x M3 washer (ISO 7089)", "2 x M3 nut (ISO 4032)"),
        part.hardware());
  }

  /** ISO 10642 M3 theoretical head diameter 6.72, document "EN ISO 10642 (DIN 7991) grade 10.9". */
  @Test
  void build_countersink_takesIso10642Cone() {
    Part part = part("screw=M3-countersunk head-seat=countersink");
    MeshGauge gauge = Proven.gauge(part.solid());
    assertEquals(6.72 + 0.2, part.stated().get("countersink-diameter"), 1e-9);
    assertEquals(6.92, gauge.pinDiameter(Axis.Z, 4.19999, 9, 0), 0.001);
    assertEquals(4.92, gauge.pinDiameter(Axis.Z, 3.2, 9, 0), ROUND);
  }

  @Test
  void build_bedChamfer_breaksOutlineAndHoles() {
    MeshGauge gauge = gauge("bed-chamfer=0.4");
    assertEquals(3.6 + 0.6, gauge.pinDiameter(Axis.Z, 0.1, 9, 0), ROUND);
    assertEquals(3.6, gauge.pinDiameter(Axis.Z, 1, 9, 0), ROUND);
    List<Double> hits = gauge.crossings(Axis.X, 0.013, 0.1);
    assertEquals(-15 + 0.3, hits.get(0), GRID);
    assertEquals(-15, gauge.crossings(Axis.X, 0.013, 1).get(0), GRID);
  }

  @Test
  void build_set_makesOneEngravedSpacerEach() {
    List<Part> parts = parts("set=1,1.5,2.25,0.25in");
    assertEquals(List.of("1", "1.5", "2.25", "6.35"), parts.stream().map(Part::suffix).toList());
    for (Part part : parts) {
      double thickness = part.stated().get("thickness");
      MeshGauge gauge = Proven.gauge(part.solid());
      assertEquals(thickness, gauge.max(Axis.Z), GRID);
      double plain = gauge.sectionArea(Axis.Z, thickness / 2);
      double engraved = gauge.sectionArea(Axis.Z, thickness - 0.2);
      assertTrue(engraved < plain - 1, "label of " + part.suffix() + " takes " + (plain - engraved));
      assertEquals(plain, gauge.sectionArea(Axis.Z, thickness - 0.45), 1e-6);
      assertTrue(part.notes().get(0).startsWith("Thickness " + part.suffix() + " mm "), part.notes().get(0));
    }
  }

  @Test
  void build_engraved_keepsClearOfHolesAndEdges() {
    for (String given : List.of("", " rows=2 width=20 row-pitch=8", " holes=1", " holes=0", " holes=3 pitch=10",
        " corner-radius=6", " head-seat=counterbore", " set=12.75")) {
      Measures plain = measures("thickness=6 engrave=never" + given);
      Measures marked = measures("thickness=6 engrave=always" + given);
      // A label that met a hole or the edge would break through the side faces' outline and change the genus.
      assertEquals(plain.genus(), marked.genus(), given);
      assertEquals(plain.pieces(), marked.pieces(), given);
      assertTrue(marked.volume() < plain.volume(), given);
    }
  }

  @Test
  void build_same_isSameTwice() {
    assertEquals(part("set=2"), part("set=2"));
  }

  @Test
  void notes_layers_sayWhatComesOut() {
    assertTrue(part("thickness=4.25").notes().get(0).contains("prints as 4.2 mm (-0.050 mm)"));
    assertTrue(part("thickness=4.25 pose=on-edge").notes().get(0).contains("does not depend on layers"));
    assertEquals(List.of("2 x M3-socket x 12 or 16", "2 x M3 nut (ISO 4032)"), part("").hardware());
    assertEquals(List.of("4 x M3-socket x 10 or 12", "4 x M3-short insert"),
        part("rows=2 row-pitch=8 width=22 fit=insert").hardware());
    assertEquals(List.of(), part("holes=0").hardware());
  }
}
