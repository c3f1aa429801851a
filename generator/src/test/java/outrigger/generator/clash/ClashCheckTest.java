package outrigger.generator.clash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Circles;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Common volumes and distances against closed forms. */
class ClashCheckTest {
  private static final double WITHIN = 5;
  private static final Solid CUBE = Shapes.box(0, 0, 0, 10, 10, 10);

  private static ClashReport check(Element... elements) {
    return ClashCheck.check(List.of(elements), List.of(), WITHIN);
  }

  private static ClashReport check(Solid a, Solid b) {
    return check(Shapes.part("a", a), Shapes.part("b", b));
  }

  private static double volume(Solid a, Solid b) {
    return check(a, b).clashes().get(0).volume();
  }

  private static double distance(Solid a, Solid b) {
    ClashReport report = check(a, b);
    assertEquals(List.of(), report.clashes());
    return report.near().get(0).distance();
  }

  @Test
  void volume_twoBoxes_isTheirCommonBox() {
    ClashReport report = check(CUBE, Shapes.box(8, 7, 9, 20, 20, 20));
    Clash clash = report.clashes().get(0);
    assertEquals(2 * 3 * 1, clash.volume());
    assertEquals(new Spot(9, 8.5, 9.5), clash.overlaps().get(0).centre());
    assertEquals(new Spot(2, 3, 1), clash.overlaps().get(0).size());
    assertEquals("a and b share 6 mm^3: 2 x 3 x 1 mm at (9, 8.5, 9.5) mm.", clash.words());
    assertFalse(report.isClear());
  }

  @Test
  void volume_twoPlaces_areBothNamed() {
    Solid fork = CUBE.cut(Shapes.box(-1, 4, -1, 11, 6, 11));
    Clash clash = check(fork, Shapes.box(9, -5, 0, 12, 15, 1)).clashes().get(0);
    assertEquals(8, clash.volume());
    assertEquals(List.of(4.0, 4.0), clash.overlaps().stream().map(Overlap::volume).toList());
    assertTrue(clash.words().contains("the largest of 2 places"), clash.words());
  }

  @Test
  void volume_boxAndCylinder_isCircleTimesThickness() {
    Solid pin = Shapes.cylinder(Axis.Z, 3, 20, 0.01).move(5, 5, 0);
    double polygon = Profile.post(6).area();
    assertEquals(polygon * 10, volume(CUBE, pin), 1e-6);
    // A chord error of e takes less than 2 e / r of a circle.
    assertEquals(Math.PI * 9 * 10, volume(CUBE, pin), Math.PI * 9 * 10 * 2 * 0.01 / 3);
  }

  /** Two equal cylinders crossing at right angles share 16 r^3 / 3 (Archimedes, The Method). */
  @Test
  void volume_crossedCylinders_comesNearTheClosedForm() {
    double closed = 16 * 27 / 3.0;
    double scaled = Double.NaN;
    for (double chordError : new double[] {0.04, 0.01, 0.0025}) {
      double miss = closed - volume(Shapes.cylinder(Axis.X, 3, 10, chordError),
          Shapes.cylinder(Axis.Y, 3, 10, chordError));
      int sides = Circles.inscribedSides(3, chordError);
      assertTrue(miss > 0, "chords inside the circle lose matter");
      // The loss falls with the square of the sides.
      if (!Double.isNaN(scaled)) {
        assertEquals(1, miss * sides * sides / scaled, 0.05, "at " + sides + " sides");
      }
      scaled = miss * sides * sides;
    }
    assertEquals(closed, closed - scaled / 96 / 96, closed * 0.003);
  }

  @Test
  void volume_oneWithinTheOther_isAllOfIt() {
    assertEquals(8, volume(CUBE, Shapes.box(4, 4, 4, 6, 6, 6)));
    assertEquals(8, volume(Shapes.box(4, 4, 4, 6, 6, 6), CUBE));
  }

  @Test
  void distance_withinAVoid_isNoClash() {
    Solid hollow = CUBE.cut(Shapes.box(2, 2, 2, 8, 8, 8));
    assertEquals(1.5, distance(hollow, Shapes.box(3.5, 4, 4, 6, 6, 6)));
  }

  @Test
  void volume_meetingItselfAlongALine_isStillMeasured() {
    Solid withoutFirst = Shapes.box(-2, -2, 0, 2, 2, 1).cut(Shapes.box(0, 0, -1, 3, 3, 2));
    Solid withoutThird = Shapes.box(-2, -2, 0, 2, 2, 1).cut(Shapes.box(-3, -3, -1, 0, 0, 2));
    assertEquals(8, volume(withoutFirst, withoutThird), 0.01);
  }

  @Test
  void check_flush_touches() {
    ClashReport report = check(CUBE, Shapes.box(10, 3, 3, 12, 5, 5));
    assertEquals(List.of(), report.clashes());
    assertEquals(1, report.touches().size());
    assertTrue(report.near().get(0).words().startsWith("a and b touch at (10, "), report.near().get(0).words());
  }

  @Test
  void check_flushInARecess_touches() {
    Solid recess = CUBE.cut(Shapes.box(2, 2, 5, 8, 8, 11));
    assertEquals(0, distance(recess, Shapes.box(2, 2, 5, 8, 8, 20)));
  }

  @Test
  void check_deepByRounding_isASeat() {
    Solid recess = CUBE.cut(Shapes.box(2, 2, 5, 8, 8, 11));
    assertEquals(0, distance(recess, Shapes.box(3, 3, 5 - 2 * Grid.STEP, 6, 6, 20)));
  }

  @Test
  void check_deepByTwoHundredths_isAClash() {
    Solid recess = CUBE.cut(Shapes.box(2, 2, 5, 8, 8, 11));
    assertEquals(9 * 0.02, volume(recess, Shapes.box(3, 3, 4.98, 6, 6, 20)), 1e-3);
  }

  @Test
  void distance_sphereAndBox_isCentreLessRadius() {
    double[] half = new double[2 * 65];
    for (int i = 0; i < 65; i++) {
      double angle = Math.PI * i / 64 - Math.PI / 2;
      half[2 * i] = i == 0 || i == 64 ? 0 : 3 * Math.cos(angle);
      half[2 * i + 1] = 3 * Math.sin(angle);
    }
    Solid sphere = Revolution.of(Profile.polygon(half)).move(-4, 5, 5);
    assertEquals(1, distance(CUBE, sphere), 0.01);
    // From the box's edge and corner: sqrt(2) and sqrt(3) times 3, less the radius of 3.
    assertEquals(3 * Math.sqrt(2) - 3, distance(CUBE, sphere.move(1, 8, 0)), 0.01);
    assertEquals(3 * Math.sqrt(3) - 3, distance(CUBE, sphere.move(1, 8, 8)), 0.01);
  }

  @Test
  void distance_crossedCylinders_isAxesLessRadii() {
    Solid along = Shapes.cylinder(Axis.X, 2, 10, 0.01);
    Solid across = Shapes.cylinder(Axis.Y, 1, 10, 0.01).move(3, 0, 4.25);
    assertEquals(1.25, distance(along, across), 1e-9);
  }

  @Test
  void distance_edges_isBetweenTheEdges() {
    Solid ridge = Shapes.box(-1, -10, -1, 1, 10, 1).turn(Axis.Y, 45);
    Solid upper = Shapes.box(-10, -1, -1, 10, 1, 1).turn(Axis.X, 45).move(0, 0, 2 * Math.sqrt(2) + 0.5);
    assertEquals(0.5, distance(ridge, upper), 1e-3);
  }

  @Test
  void check_farApart_isNotListed() {
    ClashReport report = check(CUBE, CUBE.move(15.5, 0, 0));
    assertEquals(List.of(), report.near());
    assertEquals(1, report.pairs());
    assertTrue(report.isClear());
  }

  @Test
  void check_railsAndKeepOuts_areNotComparedAmongThemselves() {
    ClashReport report = check(Element.of("left", Sort.RAIL, CUBE), Element.of("right", Sort.RAIL, CUBE),
        Element.of("tub", Sort.KEEP_OUT, CUBE.move(0, 0, 30)), Element.of("engine", Sort.KEEP_OUT, CUBE.move(1, 0, 30)));
    assertEquals(4, report.pairs());
    assertTrue(report.isClear());
  }

  @Test
  void check_screw_mayFillItsOwnHoleOnly() {
    Element flange = Shapes.part("mount", CUBE);
    Element other = Shapes.part("tray", CUBE.move(0, 0, 12));
    Solid pin = Prism.of(Profile.post(3), 5, 14).move(5, 5, 0);
    Element shank = new Element("shank 1", Sort.SHANK, "mount screw 1", java.util.Set.of("mount"), pin);
    ClashReport report = check(flange, other, shank);
    assertEquals(1, report.clashes().size());
    assertEquals("tray", report.clashes().get(0).first().name());
    assertEquals(Profile.post(3).area() * 2, report.clashes().get(0).volume(), 1e-6);
  }

  @Test
  void check_sameName_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> check(Shapes.part("a", CUBE), Shapes.part("a", CUBE)));
  }
}
