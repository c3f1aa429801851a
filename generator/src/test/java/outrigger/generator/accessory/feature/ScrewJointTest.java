package outrigger.generator.accessory.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;
import outrigger.generator.joint.ScrewPlace;
import outrigger.presets.Printer;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;

/**
 * Lengths worked out by hand from ISO 4762 head height M3 3.0, ISO 4032 nut M3 2.4, ISO 7089 washer M3 0.5 and ISO 262
 * pitch M3 0.5; the printer's layer is 0.2.
 */
class ScrewJointTest {
  private static final double NOISE = 1e-9;
  private static final Shelf SHELF = Shelf.standard();

  private static Joint joint(String screw, Fit fit, HeadSeat seat, double thickness) {
    ScrewHole hole = ScrewHole.of(SHELF.get(Screw.class, screw), fit, seat, SHELF.get(Printer.class, "demo-0.4"), SHELF);
    return new ScrewJoint("part to web", hole, "part", thickness, List.of(Member.of("web", 2)))
        .at(List.of(new ScrewPlace(1, 0, 5, 0, -1, 0)), SHELF);
  }

  private static void assertRange(double shortest, double longest, Joint joint) {
    assertEquals(shortest, joint.shortest(), NOISE);
    assertEquals(longest, joint.longest(), NOISE);
  }

  @Test
  void at_headOnFace_measuresFromTheFace() {
    Joint joint = joint("M3-socket", Fit.MEDIUM, HeadSeat.NONE, 4);
    assertRange(4 + 2 + 2.4 + 0.5, 4 + 2 + 2.4 + 6, joint);
    assertEquals(new ScrewPlace(1, 4, 5, 0, -1, 0), joint.places().get(0));
    assertEquals(3, joint.head().above(), NOISE);
  }

  /** The recess is 3.2 deep: 6 - 3.2 = 2.8 of plastic under the head. */
  @Test
  void at_counterbore_measuresFromItsFloor() {
    Joint joint = joint("M3-socket", Fit.MEDIUM, HeadSeat.COUNTERBORE, 6);
    assertRange(2.8 + 2 + 2.9, 2.8 + 2 + 8.4, joint);
    assertEquals(2.8, joint.places().get(0).y(), NOISE);
    assertEquals(-0.2, joint.head().above(), NOISE);
    assertEquals(0.2, joint.head().around(), NOISE);
  }

  /** With the washer the recess is 3.7 deep: 2.3 of plastic and 0.5 of washer. */
  @Test
  void at_washerSeat_countsTheWasher() {
    Joint joint = joint("M3-socket", Fit.MEDIUM, HeadSeat.WASHER, 6);
    assertEquals("washer", joint.grip().get(0).name());
    assertEquals(0.5, joint.grip().get(0).most(), NOISE);
    assertRange(0.5 + 2.3 + 2 + 2.9, 0.5 + 2.3 + 2 + 8.4, joint);
    assertEquals(2, joint.extras().size());
  }

  /** A countersunk screw is measured over all, ISO 10642. */
  @Test
  void at_countersink_measuresOverAll() {
    Joint joint = joint("M3-countersunk", Fit.MEDIUM, HeadSeat.COUNTERSINK, 5);
    assertRange(5 + 2 + 2.9, 5 + 2 + 8.4, joint);
    assertEquals(0, joint.head().above(), NOISE);
  }

  /** An insert 3 long ends at the far face: 2 of web and 1.5 of plastic before it. */
  @Test
  void at_insert_headLiesBehindTheWeb() {
    Joint joint = joint("M3-socket", Fit.INSERT, HeadSeat.NONE, 4.5);
    assertRange(2 + 1.5 + 3, 2 + 1.5 + 3 + 6, joint);
    assertEquals(new ScrewPlace(1, -2, 5, 0, 1, 0), joint.places().get(0));
    assertEquals(List.of("web", "part"), joint.grip().stream().map(Member::name).toList());
  }

  /** A nut 2.4 high in a pocket 2.6 deep lies on its floor: 5 - 2.6 = 2.4 of plastic before it. */
  @Test
  void at_heldNut_measuresToThePocketsFloor() {
    assertRange(2 + 2.4 + 2.9, 2 + 2.4 + 8.4, joint("M3-socket", Fit.NUT, HeadSeat.NONE, 5));
  }

  @Test
  void at_pilot_needsTwoDiametersOfPlastic() {
    Joint joint = joint("M3-socket", Fit.PILOT, HeadSeat.NONE, 8);
    assertRange(2 + 6, 2 + 8 + 6, joint);
    assertEquals(4, joint.engagement(6), NOISE);
    assertEquals(0, joint.protrusion(10), NOISE);
  }
}
