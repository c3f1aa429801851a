package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.layer.Layering;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

class OverhangGaugeTest {
  private static Reading read(Solid solid) {
    return new OverhangGauge().read(Specimens.of(solid));
  }

  private static List<Concern> concerns(Solid solid) {
    return read(solid).concerns();
  }

  private static Concern only(Solid solid) {
    List<Concern> found = concerns(solid);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  private static void assertNone(Solid solid) {
    assertEquals(List.of(), concerns(solid));
  }

  private static void assertAt(Concern concern, double x, double y, double z, double within) {
    assertEquals(x, concern.x(), within, concern.toString());
    assertEquals(y, concern.y(), within, concern.toString());
    assertEquals(z, concern.z(), within, concern.toString());
  }

  /** A cone on its tip's stub, widening upward by an angle from the vertical. */
  private static Solid widening(double degrees, double top, int sides) {
    double height = (top - 4) / StrictMath.tan(StrictMath.toRadians(degrees));
    return Revolution.cone(8, 2 * top, 0, height, sides);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 30, 44, 45})
  void cone_withinTheLimit_passes(double degrees) {
    assertNone(widening(degrees, 10, 64));
    assertNone(widening(degrees, 10, 16));
    assertNone(widening(degrees, 10, 256).turn(Axis.Z, 17));
  }

  @ParameterizedTest
  @CsvSource({"46, CAUTION", "55, CAUTION", "62, ERROR", "75, ERROR"})
  void cone_beyondTheLimit_isFoundWithItsLeanAndArea(double degrees, Severity severity) {
    Concern concern = only(widening(degrees, 10, 128));
    assertEquals("overhang", concern.rule());
    assertEquals(severity, concern.severity());
    assertEquals(degrees, concern.measured(), 0.05);
    assertEquals(45, concern.bound());
    double height = 6 / StrictMath.tan(StrictMath.toRadians(degrees));
    // From the middle of the first layer to that of the last, seen from below.
    double tangent = StrictMath.tan(StrictMath.toRadians(degrees));
    Layering layering = Layering.of(0, height, 0.2, 0.2);
    double from = 4 + 0.1 * tangent;
    double to = 4 + layering.middle(layering.count() - 1) * tangent;
    double polygon = 128 / 2.0 * StrictMath.sin(2 * Math.PI / 128);
    assertEquals(polygon * (to * to - from * from), concern.area(), 0.001 * concern.area());
    assertTrue(concern.z() > 0 && concern.z() < height);
    assertEquals(4 + concern.z() * tangent, Math.hypot(concern.x(), concern.y()), 0.05, "on the cone");
  }

  /** The limit holds whatever the layers, the first layer and the height the part was drawn at. */
  @ParameterizedTest
  @CsvSource({"0.05, 0.2", "0.1, 0.25", "0.12, 0.16", "0.3, 0.3", "0.6, 0.4"})
  void cone_otherLayers_sameAnswer(double layer, double first) {
    PrintLimits limits = PrintLimits.standard().with(Limit.LAYER, layer).with(Limit.FIRST_LAYER, first);
    for (double degrees : new double[] {30, 44, 45}) {
      assertEquals(List.of(), concerns(widening(degrees, 10, 96).turn(Axis.Z, 7).move(3, 4, 5.123), limits));
    }
    for (double degrees : new double[] {46, 60}) {
      List<Concern> found = concerns(widening(degrees, 10, 96).turn(Axis.Z, 7).move(3, 4, 5.123), limits);
      assertEquals(1, found.size(), found.toString());
      assertEquals(degrees, found.get(0).measured(), 0.05);
    }
    PrintLimits cooled = limits.with(Limit.OVERHANG, 55);
    assertEquals(List.of(), concerns(widening(55, 10, 96), cooled));
    assertEquals(1, concerns(widening(56, 10, 96), cooled).size());
  }

  private static List<Concern> concerns(Solid solid, PrintLimits limits) {
    return new OverhangGauge().read(Specimens.of(solid, limits)).concerns();
  }

  /** Brackets turned by any angle about the vertical: rounding bends their faces, the answer stays. */
  @Test
  void gussetAtTheLimit_turnedAnyhow_passes() {
    Random random = new Random(45);
    for (int i = 0; i < 20; i++) {
      double leg = 0.6 + 12 * random.nextDouble();
      double turn = 360 * random.nextDouble();
      Solid bracket = Specimens.along(1 + 6 * random.nextDouble(), 0, 0, 3, 0, 3, 5, 3 + leg, 5 + leg, 3 + leg, 9 + leg, 0,
          9 + leg).turn(Axis.Z, turn);
      assertEquals(List.of(), concerns(bracket), "leg " + leg + " turned by " + turn);
    }
  }

  @Test
  void goodParts_passWithoutConcern() {
    assertNone(Specimens.box(0, 0, 0, 20, 20, 20));
    assertNone(Prism.of(Profile.post(12), 0, 30));
    assertNone(Prism.of(Profile.rectangle(30, 20), 0, 10).withBottomEdge(EdgeForm.chamfer(1))
        .withTopEdge(EdgeForm.chamfer(1)));
    assertNone(Prism.of(Profile.rectangle(30, 20), 0, 10).withBottomEdge(EdgeForm.fillet(0.5)));
    assertNone(Specimens.along(8, 0, 0, 4, 0, 4, 10, 14, 20, 14, 25, 0, 25));
    assertNone(Specimens.along(8, 0, 0, 4, 0, 4, 10, 14, 20, 14, 25, 0, 25).turn(Axis.Z, 33));
  }

  @Test
  void gussetRemoved_isALedgeAtItsPlace() {
    Concern concern = only(Specimens.along(8, 0, 0, 4, 0, 4, 20, 14, 20, 14, 25, 0, 25));
    assertEquals("ledge", concern.rule());
    assertEquals(Severity.ERROR, concern.severity());
    assertEquals(10, concern.measured(), 0.01);
    assertEquals(80, concern.area(), 0.01);
    assertAt(concern, 9, 4, 20, 0.01);
  }

  @Test
  void ledge_upToTheLimit_passes() {
    assertNone(Specimens.along(8, 0, 0, 4, 0, 4, 10, 4.4, 10, 4.4, 15, 0, 15));
    assertEquals(Severity.CAUTION, only(Specimens.along(8, 0, 0, 4, 0, 4, 10, 5, 10, 5, 15, 0, 15)).severity());
  }

  @ParameterizedTest
  @CsvSource({"12, CAUTION", "24, CAUTION", "30, ERROR"})
  void table_longGap_isABridgeWithSpanAndDirection(double gap, Severity severity) {
    for (double turn : new double[] {0, 30, 90}) {
      Concern concern = only(Specimens.table(gap, 8).turn(Axis.Z, turn));
      assertEquals("bridge", concern.rule());
      assertEquals(severity, concern.severity());
      assertEquals(gap, concern.measured(), 0.01);
      assertEquals(gap * 8, concern.area(), 0.01 * gap * 8);
      double angle = StrictMath.toRadians(turn);
      assertAt(concern, -4 * StrictMath.sin(angle), 4 * StrictMath.cos(angle), 11.9, 0.2);
      assertTrue(concern.message().contains("running at " + (int) turn + " degrees"), concern.message());
    }
  }

  @Test
  void table_shortGap_passes() {
    assertNone(Specimens.table(9.9, 30));
    assertNone(Specimens.table(9.9, 30).turn(Axis.Z, 20));
  }

  @Test
  void table_onFourLegs_isFound() {
    Solid legs = Solid.union(Specimens.box(-12, -12, 0, 4, 4, 10), Specimens.box(8, -12, 0, 4, 4, 10),
        Specimens.box(-12, 8, 0, 4, 4, 10), Specimens.box(8, 8, 0, 4, 4, 10));
    List<Concern> found = concerns(legs.join(Specimens.box(-12, -12, 10, 24, 24, 3)));
    assertTrue(found.stream().anyMatch(c -> c.rule().equals("bridge") && Math.abs(c.measured() - 16) < 0.01),
        found.toString());
  }

  @Test
  void blindCeiling_heldAllRound_isABridgeOverItsShortSide() {
    Solid room = Specimens.box(0, 0, 0, 40, 30, 20).cut(Specimens.box(10, 5, -1, 14, 20, 13));
    Concern concern = only(room);
    assertEquals("bridge", concern.rule());
    assertEquals(14, concern.measured(), 0.01);
    assertAt(concern, 17, 15, 12, 0.2);
  }

  @Test
  void mushroom_isALedgeRoundItsStem() {
    Concern concern = only(Solid.union(Prism.of(Profile.post(6), 0, 20), Prism.of(Profile.post(20), 15, 20)));
    assertEquals("ledge", concern.rule());
    assertEquals(7, concern.measured(), 0.1);
    assertEquals(Math.PI * (100 - 9), concern.area(), 1);
    assertEquals(15, concern.z(), 0.01);
    double fromAxis = Math.hypot(concern.x(), concern.y());
    assertTrue(fromAxis > 3 && fromAxis < 10, "under the cap, not in the stem: " + concern);
  }

  @Test
  void mushroomWithSkirt_startsInTheAir() {
    Solid cap = Prism.of(Profile.post(20), 12, 20).cut(Prism.of(Profile.post(16), 11, 18));
    List<Concern> found = concerns(Solid.union(Prism.of(Profile.post(6), 0, 19), cap));
    Concern island = found.get(0);
    assertEquals("island", island.rule());
    assertEquals(Severity.ERROR, island.severity());
    assertEquals(12, island.z(), 0.01);
    assertEquals(9, Math.hypot(island.x(), island.y()), 1, "under the skirt");
  }

  @Test
  void hook_startsInTheAirAtItsTip() {
    // A post, an arm at the top with a 45 degree brace, and a tip hanging down from the arm's end.
    Solid hook = Specimens.along(5, 0, 0, 4, 0, 4, 10, 12, 18, 12, 14, 15, 14, 15, 22, 0, 22);
    List<Concern> found = concerns(hook);
    Concern island = found.get(0);
    assertEquals("island", island.rule());
    assertAt(island, 13.5, 2.5, 14, 0.01);
    assertEquals(1, found.size(), found.toString());
  }

  @Test
  void pointedTip_startsInTheAir() {
    Solid tip = Specimens.along(5, 0, 0, 4, 0, 4, 10, 12, 18, 15, 14, 18, 18, 18, 22, 0, 22);
    Concern island = only(tip);
    assertEquals("island", island.rule());
    assertAt(island, 15, 2.5, 14.1, 0.2);
  }

  @Test
  void looseBallInAHollow_startsInTheAir() {
    Solid shell = Prism.of(Profile.post(20), 0, 20).cut(Prism.of(Profile.post(12), 4, 12),
        Revolution.cone(12, 0, 12, 18));
    Solid loose = Prism.of(Profile.post(4), 6, 9);
    assertEquals("island", concerns(shell.join(loose)).get(0).rule());
  }

  /** Steps of any height that climb faster than the limit are one slope; a stair within it is none. */
  @Test
  void staircase_isJudgedByItsSlope() {
    assertNone(stairs(1, 1));
    assertNone(stairs(-0.4, 0.4));
    Concern steep = only(stairs(-0.7, 0.4));
    assertEquals("ledge", steep.rule());
    assertEquals(7, steep.measured(), 0.8);
    assertEquals(10, concerns(stairs(-2, 5)).size());
  }

  /** Ten steps; each goes in (positive run) or out over the one below. */
  private static Solid stairs(double run, double rise) {
    double from = run > 0 ? 12 : 2;
    Solid all = Specimens.box(0, 0, 0, from, 10, rise + 0.01);
    for (int i = 1; i <= 10; i++) {
      all = all.join(Specimens.box(0, 0, i * rise, from - i * run, 10, rise + (i < 10 ? 0.01 : 0)));
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 5, 8, 12, 20})
  void holeOnItsSide_sagsAsTheClosedFormSays(double diameter) {
    double length = 9;
    Reading reading = read(Specimens.holed(diameter, length));
    Fact fact = reading.facts().get(0);
    // Undersides beyond 45 degrees reach a quarter turn: sqrt(2) R wide, give or take a side of the polygon.
    double side = Math.PI * diameter / (4 * Math.ceil(Math.PI / StrictMath.acos(1 - 0.02 / diameter) / 4));
    assertEquals(Math.sqrt(2) * diameter / 2 * length, fact.value(), side * length);
    if (diameter <= 6) {
      assertEquals(List.of(), reading.concerns());
    } else {
      Concern concern = reading.concerns().get(0);
      assertEquals("round-roof", concern.rule());
      assertEquals(diameter, concern.measured(), 0.02);
      assertEquals(fact.value(), concern.area());
      assertAt(concern, diameter / 2 + 5, length / 2, diameter + 5, 0.05);
    }
  }

  /** A ring cut 0.4 mm deep into an upright wall, as of a 0: its curved top stands out no further than a ledge may. */
  @Test
  void engravedRing_onAWall_passes() {
    Solid ring = Prism.of(Profile.post(9).cut(Profile.hole(7)), -0.4, 1).turn(Axis.X, 90);
    assertNone(Specimens.box(-10, 0, 0, 20, 10, 20).cut(ring.move(0, 0, 10)));
  }

  /** Nothing takes support out of a closed hollow, so nobody is told to put any there. */
  @Test
  void roofOfAClosedHollow_isNotToBeSupported() {
    Concern roof = only(Specimens.box(0, 0, 0, 40, 40, 20).cut(Specimens.box(5, 5, 5, 30, 30, 10)));
    assertEquals("bridge", roof.rule());
    assertTrue(roof.advice().contains("closed hollow") && !roof.advice().contains("print it with support"), roof.advice());
    Solid open = Specimens.box(0, 0, 0, 40, 40, 20).cut(Specimens.box(5, 5, 5, 30, 30, 10),
        Specimens.box(0, 15, 5, 10, 10, 4));
    assertTrue(concerns(open).stream().allMatch(c -> c.advice().contains("print it with support")));
    Concern loose = only(Specimens.box(0, 0, 0, 20, 20, 20).cut(Specimens.box(5, 5, 5, 9, 9, 10))
        .join(Specimens.box(7, 7, 9, 3, 3, 3)));
    assertTrue(loose.rule().equals("island") && !loose.advice().contains("print it with support"), loose.toString());
  }

  /** A roof that stands on a post with one end is painted all over its free underside, and nowhere else. */
  @Test
  void mappedRoof_isPaintedWhereItHangsAlone() {
    Solid part = Solid.union(Specimens.box(0, 0, 0, 10, 10, 10), Specimens.box(0, 0, 10, 40, 10, 3));
    FacetField field = new OverhangGauge().read(Specimens.of(part).mapped()).fields().get(0);
    int painted = 0;
    for (int f = 0; f < field.size(); f++) {
      for (FacetField.Place place : field.places(f)) {
        assertEquals(10, place.z(), 1e-9);
        assertTrue(place.x() > 9.9, place.toString());
        assertEquals(90, place.value(), 1e-9);
        painted++;
      }
    }
    assertTrue(painted > 300, painted + " places");
  }

  /** Whether support is needed is told in a word, with what leans beyond the limit and holds all the same. */
  @Test
  void support_isToldWhetherOrNotItIsNeeded() {
    assertSupport(0, "no support needed: nothing leans beyond 45 degrees", Specimens.box(0, 0, 0, 20, 20, 20));
    assertSupport(0, "no support needed: the 64 mm2 that lean beyond 45 degrees are short bridges, ledges and roofs that hold"
        + " by themselves", Specimens.table(8, 8));
    assertSupport(1, "support, or a change named above, may be needed at 1 place", Specimens.table(12, 8));
    assertSupport(1, "support, or a change named above, is needed at 1 place", Specimens.table(30, 8));
    assertSupport(2, "support, or a change named above, is needed at 1 place and may be needed at 1 place",
        Solid.union(Specimens.holed(8, 12), Specimens.box(17, 2, 10, 6, 3, 4)));
  }

  private static void assertSupport(int places, String words, Solid solid) {
    Fact fact = read(solid).facts().stream().filter(f -> f.name().equals("support-places")).findFirst().orElseThrow();
    assertEquals(words, fact.words());
    assertEquals(places, fact.value());
  }

  @Test
  void teardrop_passes() {
    double r = 5;
    Solid pointed = Prism.of(Profile.hole(2 * r).join(Profile.polygon(0, 0, r * 0.7072, r * 0.7072, 0, r * 1.4143,
        -r * 0.7072, r * 0.7072)), -11, 1).turn(Axis.X, 90);
    assertNone(Specimens.box(-15, 0, 0, 30, 10, 30).cut(pointed.move(0, 0, 15)));
  }

  @Test
  void movedTurnedMirrored_movesTheConcerns() {
    Solid part = Solid.union(Specimens.holed(8, 12), Specimens.box(17, 2, 10, 6, 3, 4));
    List<Concern> plain = concerns(part);
    assertEquals(List.of("ledge", "round-roof"), plain.stream().map(Concern::rule).toList());
    List<Concern> moved = concerns(part.mirror(Axis.X).turn(Axis.Z, 37).move(50, -20, 7));
    double c = StrictMath.cos(StrictMath.toRadians(37));
    double s = StrictMath.sin(StrictMath.toRadians(37));
    for (int i = 0; i < plain.size(); i++) {
      Concern a = plain.get(i);
      Concern b = moved.get(i);
      assertEquals(a.rule(), b.rule());
      assertEquals(a.severity(), b.severity());
      assertEquals(a.measured(), b.measured(), 0.01);
      assertEquals(a.area(), b.area(), 0.01 * a.area());
      assertAt(b, -a.x() * c - a.y() * s + 50, -a.x() * s + a.y() * c - 20, a.z() + 7, 0.02);
    }
  }

  /** A disc whose flank flares faster than a layer is wide starts in the air though its lowest corners lie off it. */
  @Test
  void flatConeInTheAir_startsInTheAir() {
    Concern island = only(Solid.union(Specimens.box(0, 0, 0, 10, 10, 5), Revolution.cone(16, 0, 8.1, 10)));
    assertEquals("island", island.rule());
    assertEquals(16, island.measured(), 1.5);
  }

  @Test
  void read_anyNumberOfWorkers_sameReading() {
    Solid part = Solid.union(Specimens.holed(8, 12), Specimens.box(17, 2, 10, 6, 3, 4));
    Specimen one = new Specimen(Specimens.proven(part), PrintLimits.standard(), Map.of(), Workers.of(1));
    Specimen four = new Specimen(Specimens.proven(part), PrintLimits.standard(), Map.of(), Workers.of(4));
    assertEquals(new OverhangGauge().read(one).concerns(), new OverhangGauge().read(four).concerns());
    assertEquals(new OverhangGauge().read(one).facts(), new OverhangGauge().read(four).facts());
  }
}
