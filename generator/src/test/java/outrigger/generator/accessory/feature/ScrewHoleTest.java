package outrigger.generator.accessory.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.accessory.Words;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.measure.Proven;
import outrigger.generator.joint.Piece;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** Screw holes cut in a block 20 x 20, as its mesh has them. Printer: 0.2 layers, 0.2 hole allowance, 0.9 wall. */
class ScrewHoleTest {
  private static final Shelf SHELF = Shelf.standard();
  private static final Printer PRINTER = SHELF.get(Printer.class, "demo-0.4");
  private static final double ALLOWANCE = 0.2;
  /** A circumscribed circle of any size here measures at most the chord error more at its corners. */
  private static final double ROUND = 2 * Profile.CHORD_ERROR;

  static ScrewHole hole(String screw, Fit fit, HeadSeat seat) {
    return ScrewHole.of(SHELF.get(Screw.class, screw), fit, seat, PRINTER, SHELF);
  }

  private static MeshGauge block(ScrewHole hole, double thickness) {
    return Proven.gauge(Prism.of(Profile.rectangle(20, 20), 0, thickness).cut(hole.cutter(0, thickness, "thickness")));
  }

  /** ISO 273, page "Clearance Hole Sizes - Reference Data (ISO 273)": a pin of the hole's size passes. */
  @ParameterizedTest
  @CsvSource({"M1.6-socket, MEDIUM, 1.8", "M2-socket, FINE, 2.2", "M2-socket, MEDIUM, 2.4", "M2.5-socket, MEDIUM, 2.9",
      "M3-socket, MEDIUM, 3.4", "M3-socket, COARSE, 3.6"})
  void cutter_clearance_passesIso273AndAllowance(String screw, Fit fit, double iso273) {
    ScrewHole hole = hole(screw, fit, HeadSeat.NONE);
    double pin = block(hole, 3).pinDiameter(Axis.Z, 1.5, 0, 0);
    assertTrue(pin >= iso273 + ALLOWANCE - Grid.STEP, "pin " + pin);
    assertEquals(iso273 + ALLOWANCE, pin, ROUND);
    assertTrue(hole.isPlain());
  }

  /** ISO 4762 head diameters, page "Socket Head Cap Screws (ISO 4762 / DIN 912) - Dimensions & Specifications". */
  @ParameterizedTest
  @CsvSource({"M1.6-socket, 3.0, 1.6, 0.2", "M2-socket, 3.8, 2.0, 0.4", "M3-socket, 5.5, 3.0, 0.4"})
  void cutter_counterbore_takesIso4762Head(String screw, double head, double height, double play) {
    MeshGauge gauge = block(hole(screw, Fit.MEDIUM, HeadSeat.COUNTERBORE), 6);
    double pin = gauge.pinDiameter(Axis.Z, 5.9, 0, 0);
    assertTrue(pin >= head + play + ALLOWANCE - Grid.STEP, "pin " + pin);
    assertEquals(head + play + ALLOWANCE, pin, ROUND);
    // The recess's floor: one layer lower than the head is high.
    List<Double> hits = gauge.crossings(Axis.Z, head / 2 - 0.05, 0.01);
    assertEquals(6 - height - 0.2, hits.get(hits.size() - 1), Grid.STEP);
  }

  /** ISO 10642 theoretical head diameters, document "EN ISO 10642 (DIN 7991) grade 10.9"; a 90 degree cone. */
  @ParameterizedTest
  @CsvSource({"M3-countersunk, 6.72, 3.6", "M4-countersunk, 8.96, 4.7"})
  void cutter_countersink_takesIso10642Cone(String screw, double theoretical, double bore) {
    MeshGauge gauge = block(hole(screw, Fit.MEDIUM, HeadSeat.COUNTERSINK), 6);
    double mouth = theoretical + ALLOWANCE;
    double below = 0.001;
    assertEquals(mouth, gauge.pinDiameter(Axis.Z, 6 - below, 0, 0) + 2 * below, 0.002);
    assertEquals(mouth - 2, gauge.pinDiameter(Axis.Z, 5, 0, 0), ROUND);
    assertEquals(bore, gauge.pinDiameter(Axis.Z, 1, 0, 0), ROUND);
    double depth = (mouth - bore) / 2;
    assertEquals(bore, gauge.pinDiameter(Axis.Z, 6 - depth - 0.01, 0, 0), ROUND);
  }

  /** ISO 4032 across flats and height, page "BS EN ISO 4032 Hexagon nuts style 1". */
  @ParameterizedTest
  @CsvSource({"M3-socket, 5.5, 2.4", "M2-socket, 4.0, 1.6"})
  void cutter_nut_takesIso4032(String screw, double acrossFlats, double height) {
    ScrewHole hole = hole(screw, Fit.NUT, HeadSeat.NONE);
    MeshGauge gauge = block(hole, 5);
    assertEquals(acrossFlats + ALLOWANCE, gauge.pinDiameter(Axis.Z, 4.9, 0, 0), ROUND);
    List<Double> hits = gauge.crossings(Axis.Z, acrossFlats / 2 - 0.05, 0.01);
    assertEquals(5 - height - 0.2, hits.get(hits.size() - 1), Grid.STEP);
    assertEquals(List.of("1 x " + hole.screw().size() + " nut (ISO 4032)"),
        hole.extras().stream().map(Piece::line).toList());
  }

  @Test
  void cutter_insertInThickPart_keepsAShoulder() {
    MeshGauge gauge = block(hole("M3-socket", Fit.INSERT, HeadSeat.NONE), 6);
    // Hole 4.0 and 4 deep, common practice; behind it a clearance hole of 3.4 for the screw's end.
    assertEquals(4.2, gauge.pinDiameter(Axis.Z, 2.1, 0, 0), ROUND);
    assertEquals(3.6, gauge.pinDiameter(Axis.Z, 1.9, 0, 0), ROUND);
  }

  @Test
  void cutter_insertInThinPart_goesRightThrough() {
    MeshGauge gauge = block(hole("M3-socket", Fit.INSERT, HeadSeat.NONE), 4);
    assertEquals(4.2, gauge.pinDiameter(Axis.Z, 0.1, 0, 0), ROUND);
  }

  @Test
  void cutterFromBelow_counterbore_opensDownward() {
    ScrewHole hole = hole("M3-socket", Fit.MEDIUM, HeadSeat.COUNTERBORE);
    MeshGauge gauge = Proven.gauge(Prism.of(Profile.rectangle(20, 20), 0, 6).cut(hole.cutterFromBelow(0, 6, "t")));
    assertEquals(6.1, gauge.pinDiameter(Axis.Z, 0.1, 0, 0), ROUND);
    assertEquals(3.6, gauge.pinDiameter(Axis.Z, 5.9, 0, 0), ROUND);
  }

  @Test
  void cutter_bevelledRim_isWiderOnTheBed() {
    ScrewHole hole = hole("M3-socket", Fit.MEDIUM, HeadSeat.COUNTERBORE);
    MeshGauge gauge = Proven.gauge(Prism.of(Profile.rectangle(20, 20), 0, 6).cut(hole.cutter(0, 6, 0.4, "t")));
    assertEquals(3.6 + 2 * (0.4 - 0.1), gauge.pinDiameter(Axis.Z, 0.1, 0, 0), ROUND);
    assertEquals(3.6, gauge.pinDiameter(Axis.Z, 0.5, 0, 0), ROUND);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "M3-socket | MEDIUM | COUNTERSINK | head-seat | does not fit the socket head",
      "M3-countersunk | MEDIUM | COUNTERBORE | head-seat | conical head",
      "M3-socket | PILOT | COUNTERBORE | head-seat | takes the other end of the screw",
      "M3-socket | INSERT | COUNTERBORE | head-seat | takes the other end of the screw",
      "M3-socket | NUT | COUNTERBORE | head-seat | takes the other end of the screw",
      "M4-socket | INSERT | NONE | screw | no heat-set insert for M4 in the tables, only for M1.6, M2, M2.5, M3",
      "M5-socket | PILOT | NONE | screw | no pilot hole for M5"})
  void of_whatDoesNotGoTogether_isRefused(String screw, Fit fit, HeadSeat seat, String parameter, String words) {
    BadDimension refusal = assertThrows(BadDimension.class, () -> hole(screw, fit, seat));
    assertEquals(parameter, refusal.parameter());
    assertTrue(refusal.what().contains(words), refusal.getMessage());
  }

  /** Head 3.0 and a layer, insert 3.0, nut 2.4 and a layer, cone (6.92 - 3.6) / 2 and two layers. */
  @ParameterizedTest
  @CsvSource({"M3-socket, MEDIUM, COUNTERBORE, 4.1", "M3-socket, INSERT, NONE, 3.0", "M3-socket, NUT, NONE, 3.5",
      "M3-countersunk, MEDIUM, COUNTERSINK, 2.06"})
  void cutter_partTooThin_isRefused(String screw, Fit fit, HeadSeat seat, double thinnest) {
    ScrewHole hole = hole(screw, fit, seat);
    hole.requireThickness(thinnest, "thickness");
    BadDimension refusal = assertThrows(BadDimension.class, () -> hole.cutter(0, thinnest - 0.01, "floor"));
    assertEquals("floor", refusal.parameter());
    assertTrue(refusal.what().contains("needs a part " + Words.mm(thinnest)), refusal.getMessage());
  }

  @Test
  void pilot_m3_isWhatBuildersReport() {
    ScrewHole hole = hole("M3-socket", Fit.PILOT, HeadSeat.NONE);
    assertEquals(2.6 + ALLOWANCE, hole.diameter(), 1e-9);
    assertEquals(List.of(), hole.extras());
  }
}
