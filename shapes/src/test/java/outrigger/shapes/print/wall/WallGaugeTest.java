package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Walls of known thickness; no published source needed, each figure is geometry. */
class WallGaugeTest {
  /** The issue's own bound for plates, mm. */
  private static final double CLOSE = 0.01;

  private static Reading read(Solid solid) {
    return new WallGauge().read(WallShapes.specimen(solid));
  }

  private static Concern only(Solid solid) {
    List<Concern> concerns = read(solid).concerns();
    assertEquals(1, concerns.size(), concerns.toString());
    return concerns.get(0);
  }

  private static void assertAt(Concern c, double x, double y, double z, double within) {
    assertTrue(new Vec(c.x(), c.y(), c.z()).distance(new Vec(x, y, z)) <= within, c.toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.4, 0.5, 0.8, 0.9, 1, 1.5, 2, 3, 5})
  void read_plate_findsItsThickness(double thickness) {
    Solid plate = WallShapes.block(20, 30, thickness);
    for (boolean level : new boolean[] {true, false}) {
      Reading reading = read(level ? plate : WallShapes.turned(plate));
      assertEquals("thinnest-wall", reading.facts().get(0).name());
      assertEquals(thickness, reading.facts().get(0).value(), CLOSE);
      assertEquals(thickness < 0.9 ? 1 : 0, reading.concerns().size(), reading.concerns().toString());
      for (Concern c : reading.concerns()) {
        assertEquals(thickness < (level ? 0.4 : 0.45) ? Severity.ERROR : Severity.CAUTION, c.severity());
        assertEquals("thin-wall", c.rule());
        assertEquals(thickness, c.measured(), CLOSE);
      }
    }
  }

  /** Two layers lie in a floor of 0.4 mm; an upright wall of 0.4 mm is thinner than one line. */
  @Test
  void read_levelSheet_isHeldAgainstLayers() {
    Solid floor = WallShapes.block(12, 12, 5).cut(WallShapes.block(8, 8, 5).move(0, 0, 0.4));
    assertEquals(Severity.CAUTION, only(floor).severity());
    assertEquals(Limit.WALL, only(floor).limit());
    Solid thinner = WallShapes.block(12, 12, 5).cut(WallShapes.block(8, 8, 5).move(0, 0, 0.35));
    assertEquals(Severity.ERROR, only(thinner).severity());
    assertEquals(Limit.FLOOR, only(thinner).limit());
    assertEquals(2 * 8 * 8, only(thinner).area(), 0.06 * 128);
    Solid upright = floor.turn(Axis.X, 90);
    assertEquals(Severity.ERROR, only(upright).severity());
    assertEquals(Limit.LEAST_WALL, only(upright).limit());
  }

  @Test
  void read_plateBelowLimit_tellsAreaOfBothFacesAndRims() {
    Concern c = only(WallShapes.block(20, 30, 0.3));
    assertEquals(2 * 20 * 30 + 2 * (20 + 30) * 0.3, c.area(), 0.01 * c.area());
    assertAt(c, 0, 0, 0.15, 1);
  }

  @Test
  void read_wedge_findsItsThinEndAndTheAreaBelowTheLimit() {
    Concern c = only(WallShapes.wedge(20, 0.5, 3, 10));
    assertEquals(0.5, c.measured(), CLOSE);
    assertEquals(0, c.x(), CLOSE);
    assertEquals(0.25, c.y(), CLOSE);
  }

  /** Top and bottom, the end and two sides, as far as the ball between top and bottom is narrower than the limit. */
  @Test
  void read_wedge_tellsTheAreaBelowTheLimit() {
    for (double[] size : new double[][] {{0.3, 2, 4}, {0.3, 3, 10}, {0.3, 4, 10}, {0.5, 2, 4}, {0.5, 3, 10}, {0.6, 2, 10}}) {
      double limit = size[0] < 0.45 ? 0.45 : 0.9;
      double rise = (size[1] - size[0]) / 20;
      double thick = limit * (1 + Math.hypot(1, rise)) / 2;
      double way = (thick - size[0]) / rise;
      double area = size[2] * (way * (1 + Math.hypot(1, rise)) + size[0]) + way * (size[0] + thick);
      Solid wedge = WallShapes.wedge(20, size[0], size[1], size[2]);
      for (Solid solid : List.of(wedge, WallShapes.turned(wedge))) {
        assertEquals(area, only(solid).area(), 0.022 * area, size[0] + " to " + size[1] + " mm, " + size[2] + " mm wide");
      }
    }
  }

  @Test
  void read_wedgeToNothing_isThinOverItsWholeLastPart() {
    Concern c = only(WallShapes.wedge(20, 0, 3, 10));
    assertTrue(c.measured() < CLOSE, c.toString());
    assertEquals(0, c.x(), 0.1);
    assertEquals(Severity.ERROR, c.severity());
    assertEquals("thin-edge", c.rule());
    // 0.45 mm thick 3 mm from the edge
    assertTrue(c.message().matches(".*over its last (2[.]9|3[.]0)\\d mm: that much of it will be missing"), c.message());
  }

  @Test
  void read_sharpEdgeThatLosesLittle_isACaution() {
    Concern c = only(WallShapes.wedge(20, 0, 20 * StrictMath.tan(StrictMath.toRadians(20)), 10));
    assertEquals("thin-edge", c.rule());
    assertEquals(Severity.CAUTION, c.severity());
  }

  @Test
  void read_tubeWithEccentricBore_findsPlaceAndValue() {
    for (double off : new double[] {0.3, 0.5, 0.7}) {
      Concern c = only(WallShapes.tube(10, 8, off, 6));
      assertEquals(1 - off, c.measured(), CLOSE, "bore off by " + off);
      assertEquals(5 - (1 - off) / 2, Math.hypot(c.x(), c.y()), CLOSE);
      assertEquals(0, c.y(), 0.4);
      assertTrue(c.x() > 0);
    }
  }

  @Test
  void read_ballInBall_findsTheShell() {
    Concern even = only(WallShapes.ball(12, 0, 0).cut(WallShapes.ball(10.6, 0, 0)));
    assertEquals(0.7, even.measured(), CLOSE);
    Concern off = only(WallShapes.ball(12, 0, 0).cut(WallShapes.ball(10, 0, 0.6)));
    assertEquals(0.4, off.measured(), CLOSE);
    assertAt(off, 5.8, 0, 0, 0.5);
  }

  @Test
  void read_smallBallOfManyFacets_isAsThickAsItself() {
    Concern c = only(WallShapes.ball(0.7, 0, 0));
    assertEquals(0.7, c.measured(), CLOSE);
    assertAt(c, 0, 0, 0, 0.05);
  }

  @Test
  void read_dumbbell_findsItsNeck() {
    Concern c = only(WallShapes.dumbbell(6, 0.6));
    assertEquals(0.6, c.measured(), CLOSE);
    assertEquals("thin-pin", c.rule());
    assertEquals(Severity.CAUTION, c.severity());
    assertAt(c, 0, 0, 6, 3.1);
  }

  /** A bar notched from below and above, the bottoms of the notches a stated way apart and aside of each other. */
  private static Solid notched(double left, double halfAngle, double aside) {
    double deep = 3 - left / 2;
    double wide = deep * StrictMath.tan(StrictMath.toRadians(halfAngle));
    return Prism.of(Profile.polygon(-12, 0, -wide, 0, 0, deep, wide, 0, 12, 0, 12, 6, wide + aside, 6, aside, 6 - deep,
        aside - wide, 6, -12, 6), 0, 10);
  }

  @Test
  void read_notchesFromBothSides_findsWhatTheyLeave() {
    for (double left : new double[] {0.3, 0.7}) {
      for (double halfAngle : new double[] {20, 30, 45, 60}) {
        for (double aside : new double[] {0, 0.05, -0.05}) {
          for (Solid bar : List.of(notched(left, halfAngle, aside), WallShapes.turned(notched(left, halfAngle, aside)))) {
            Concern c = only(bar);
            assertEquals(Math.hypot(left, aside), c.measured(), CLOSE);
            assertEquals(c.measured() < 0.45 ? Severity.ERROR : Severity.CAUTION, c.severity(), c.toString());
            assertTrue(c.message().matches("the neck .* along (9[.][4-9]|10|10[.]1) mm: .*"), c.message());
          }
          assertAt(only(notched(left, halfAngle, aside)), aside / 2, 3, 5, 0.5);
        }
      }
    }
    assertTrue(read(notched(1, 45, 0)).concerns().isEmpty());
  }

  @Test
  void read_notchesThatComeCloserAlongTheWay_findsTheNarrowEnd() {
    Solid notch = Prism.of(Profile.polygon(-5, -5, 0, 0, 5, -5), -1, 21);
    Solid bar = Prism.of(Profile.rectangle(24, 7), 0, 20).cut(notch.move(0, -0.5, 0),
        notch.mirror(Axis.Y).turn(Axis.X, 2).move(0, 0.5, 0));
    assertEquals(1 - 20 * StrictMath.tan(StrictMath.toRadians(2)), only(bar).measured(), 0.02);
  }

  @Test
  void read_bodiesThatMeetAtACorner_areANeck() {
    Solid cube = WallShapes.block(8, 8, 8);
    for (double over : new double[] {0.2, 0.4}) {
      Concern edge = only(cube.join(cube.move(8 - over, 8 - over, 0)));
      assertEquals(over * Math.sqrt(2), edge.measured(), CLOSE);
      Concern corner = only(cube.join(cube.move(8 - over, 8 - over, 8 - over)));
      assertEquals("thin-neck", corner.rule());
      assertEquals(over * Math.sqrt(2), corner.measured(), CLOSE);
      assertEquals(over < 0.3 ? Severity.ERROR : Severity.CAUTION, corner.severity());
      assertAt(corner, 4 - over / 2, 4 - over / 2, 8 - over / 2, 0.1);
    }
    Solid aside = cube.move(0.13, 0.29, 0.41);
    assertEquals(Severity.ERROR, only(aside.join(aside.move(7.8, 7.8, 7.8))).severity());
    assertTrue(read(cube.join(cube.move(7, 7, 0))).concerns().isEmpty());
  }

  @Test
  void read_pinsCloseBesideEachOther_areToldOneByOne() {
    Solid plate = Prism.of(Profile.rectangle(12, 6), -2, 0.1).move(3, 0, 0);
    List<Double> middles = new ArrayList<>();
    List<Solid> pins = new ArrayList<>();
    double x = 0;
    for (double width = 0.3; width < 0.75; width += 0.1) {
      middles.add(x + width / 2);
      pins.add(Prism.of(Profile.post(width, 0.002).move(x + width / 2, 0), 0, 5));
      x += width + 0.5;
    }
    List<Concern> told = read(plate.join(pins.toArray(Solid[]::new))).concerns();
    assertEquals(middles.size(), told.size(), told.toString());
    for (int i = 0; i < told.size(); i++) {
      assertEquals("thin-pin", told.get(i).rule());
      assertEquals(0.3 + 0.1 * i, told.get(i).measured(), 0.005);
      assertEquals(middles.get(i), told.get(i).x(), 0.02);
    }
  }

  /** However the few samples on so small a web fall, it has a top and a bottom and is no rib. */
  @Test
  void read_websBetweenHoles_areWallsOneAndAll() {
    for (double thick : new double[] {1.2, 1.6, 3}) {
      for (double aside : new double[] {0, 0.17, 0.31}) {
        List<Profile> holes = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
          holes.add(Profile.hole(1.2).move(2 * (i % 8), 1.6 * (i / 8)));
        }
        Solid plate = Prism.of(Profile.rectangle(24 + aside, 16).move(7 + aside, 3.2).cut(Profile.union(holes)), 0, thick);
        for (Solid solid : List.of(plate, WallShapes.turned(plate))) {
          for (Concern c : read(solid).concerns()) {
            assertEquals("thin-wall", c.rule(), c.toString());
            assertEquals(0.4, c.measured(), 0.021);
          }
        }
      }
    }
  }

  @Test
  void read_tipNearAFace_isFoundWhereverSamplesLie() {
    for (double x = -0.3; x <= 0.3; x += 0.05) {
      Solid drilled = WallShapes.block(12, 12, 5).cut(Revolution.cone(3, 0, -1, 4.7).move(x, 2 * x, 0));
      Concern c = only(drilled);
      assertEquals(0.3, c.measured(), CLOSE);
      assertAt(c, x, 2 * x, 4.85, 0.05);
    }
  }

  @Test
  void read_smallForms_areToldApart() {
    Solid base = WallShapes.block(12, 12, 3);
    assertEquals("thin-pin", only(base.join(Prism.of(Profile.post(0.4), 2, 8))).rule());
    assertEquals("thin-pin", only(base.join(WallShapes.block(0.4, 0.4, 8))).rule());
    assertEquals("thin-rib", only(base.join(WallShapes.block(0.4, 9, 4))).rule());
    assertEquals("thin-wall", only(base.join(WallShapes.block(0.4, 9, 9))).rule());
    Solid text = base.join(Prism.of(Profile.text("I", 6, 0.4).move(-1, -3), 2, 3.6));
    assertEquals("thin-rib", only(text).rule());
    assertEquals(Severity.ERROR, only(text).severity());
  }

  /** Facets of a part that was written in metres are too narrow to be measured from. */
  @Test
  void read_partInMetres_isAllTooThin() {
    for (double longest : new double[] {0.3, 0.1, 0.014}) {
      Solid cup = WallShapes.block(longest, longest / 5, longest / 10)
          .cut(WallShapes.block(longest / 2, longest / 10, longest).move(0, 0, longest / 20));
      Reading reading = new WallGauge().read(WallShapes.specimen(cup));
      assertTrue(reading.concerns().stream().anyMatch(c -> c.severity() == Severity.ERROR
          && c.measured() <= longest / 10 + 1e-4), longest + " mm: " + reading.concerns());
      assertEquals("thinnest-wall", reading.facts().get(0).name());
    }
  }

  /** Between two short strokes cut beside each other a speck of a ridge is left: told, but no reason not to print. */
  @Test
  void read_speckBetweenStrokes_isACaution() {
    Solid stroke = WallShapes.block(0.7, 0.7, 1);
    Concern c = only(WallShapes.block(12, 12, 3).cut(stroke.move(-0.5, 0, 2.6), stroke.move(0.5, 0, 2.6)));
    assertEquals("thin-rib", c.rule());
    assertEquals(Severity.CAUTION, c.severity());
    assertEquals(0.3, c.measured(), CLOSE);
    assertAt(c, 0, 0, 2.8, 0.25);
    assertTrue(c.message().contains("may be missing"), c.message());
  }

  /** Whoever reads of the thinnest wall does not mean a tip, which is nothing thick. */
  @Test
  void read_needle_hasNoWallOfNothing() {
    Reading reading = read(Revolution.cone(10, 0, 0, 30));
    assertEquals(List.of(), reading.concerns());
    assertEquals("no wall is thinner than 0.90 mm, but for tips and sharp edges", reading.facts().get(0).words());
  }

  /** A smaller one is no concern, but it is told. */
  @Test
  void read_smallSpeckBetweenStrokes_isAFact() {
    Solid stroke = WallShapes.block(0.4, 0.3, 1);
    Reading reading = read(WallShapes.block(12, 12, 3).cut(stroke.move(-0.35, 0, 2.6), stroke.move(0.35, 0, 2.6)));
    assertEquals(List.of(), reading.concerns());
    assertEquals("specks", reading.facts().get(1).name());
    assertTrue(reading.facts().get(1).words().startsWith("1 speck between strokes"), reading.facts().toString());
  }

  /** A place that is thin under one tip alone has no area worth a number. */
  @Test
  void read_thinUnderATip_tellsNoAreaOfNothing() {
    Concern c = only(WallShapes.block(12, 12, 5).cut(Revolution.cone(3, 0, -1, 4.7)));
    assertTrue(c.message().contains("at that spot alone") || c.area() >= 0.05, c.toString());
    assertTrue(!c.message().contains(" 0 mm2"), c.message());
  }

  @Test
  void read_pinOfThreeSides_isAsThickAsItsInnerCircle() {
    double side = 0.8;
    Concern c = only(Prism.of(Profile.polygon(0, 0, side, 0, side / 2, side * Math.sqrt(0.75)), 0, 10));
    assertEquals(side / Math.sqrt(3), c.measured(), 2 * CLOSE);
    assertEquals("thin-pin", c.rule());
  }

  @Test
  void read_goodForms_raiseNoAlarm() {
    Solid cube = WallShapes.block(20, 20, 20);
    Solid gusset = WallShapes.wedge(10, 0, 10, 3);
    Map<String, Solid> good = Map.of("cube", cube, "cylinder", Prism.of(Profile.post(10), 0, 20), "chamfered block",
        Prism.of(Profile.chamferedRectangle(20, 20, 1), 0, 10), "gusset", gusset, "gusset on a plate",
        WallShapes.block(20, 20, 3).join(gusset.turn(Axis.X, 90).move(0, 0, 2.5)), "cone 30",
        Revolution.cone(20, 0, 0, 17.3), "cone 60", Revolution.cone(20, 0, 0, 5.77), "small rounding",
        Prism.of(Profile.roundedRectangle(20, 20, 0.3), 0, 10), "stroke of two lines",
        WallShapes.block(40, 12, 2).join(Prism.of(Profile.text("FRONT 3", 6, 0.8).move(-15, -3), 1.5, 2.5)),
        "two lines", WallShapes.block(20, 20, 0.9));
    good.forEach((name, solid) -> {
      assertEquals(List.of(), read(solid).concerns(), name);
      assertEquals(List.of(), read(WallShapes.turned(solid)).concerns(), name + " turned");
    });
  }

  @Test
  void read_turnedMovedMirrored_givesTheSameMovedWithIt() {
    Solid part = WallShapes.block(20, 14, 3).join(WallShapes.block(0.6, 12, 9).move(6, 0, 0),
        Prism.of(Profile.post(0.4), 2, 7).move(-6, 3, 0));
    List<Concern> plain = read(part).concerns();
    assertEquals(2, plain.size(), plain.toString());
    Placement turn = Placement.turn(Axis.X, 23).then(Placement.turn(Axis.Z, 67)).then(Placement.move(3, -5, 7));
    for (Placement p : List.of(Placement.mirror(Axis.X), Placement.turn(Axis.Z, 90), Placement.turn(Axis.Y, 180),
        Placement.move(11.1, -7.3, 2.9), turn, turn.then(Placement.mirror(Axis.Y)))) {
      List<Concern> placed = read(part.place(p)).concerns();
      assertEquals(plain.size(), placed.size());
      for (int i = 0; i < placed.size(); i++) {
        Concern a = plain.get(i);
        Concern b = placed.get(i);
        assertEquals(a.rule(), b.rule());
        assertEquals(a.measured(), b.measured(), 2e-3);
        assertEquals(a.area(), b.area(), 0.03 * a.area() + 0.1);
        // of an even wall, its middle is told; samples lie up to one spacing off it
        assertAt(b, p.x(a.x(), a.y(), a.z()), p.y(a.x(), a.y(), a.z()), p.z(a.x(), a.y(), a.z()), 1);
      }
    }
  }

  @Test
  void read_anyNumberOfThreads_givesTheSame() {
    Solid part = WallShapes.tube(10, 8, 0.5, 40).join(WallShapes.block(60, 60, 0.8));
    Reading one = new WallGauge().read(WallShapes.specimen(Mesher.mesh(part), PrintLimits.standard(), 1));
    Reading four = new WallGauge().read(WallShapes.specimen(Mesher.mesh(part), PrintLimits.standard(), 4));
    assertEquals(one.concerns(), four.concerns());
    assertEquals(one.facts(), four.facts());
    for (int f = 0; f < one.fields().get(0).size(); f++) {
      assertEquals(one.fields().get(0).value(f), four.fields().get(0).value(f));
    }
  }

  @Test
  void read_field_isLowOnThinFacetsAlone() {
    Specimen s = WallShapes.specimen(WallShapes.block(12, 12, 6).join(WallShapes.block(0.4, 9, 12)));
    FacetField field = new WallGauge().read(s).fields().get(0);
    assertEquals(s.mesh().facetCount(), field.size());
    for (int f = 0; f < field.size(); f++) {
      boolean above = true;
      for (int k = 0; k < 3; k++) {
        above &= s.mesh().z(s.mesh().corner(f, k)) * Math.pow(2, -14) >= 6;
      }
      boolean onRib = above && Math.abs(s.mesh().x(s.mesh().corner(f, 0)) * Math.pow(2, -14)) < 0.3
          && Math.abs(s.mesh().x(s.mesh().corner(f, 1)) * Math.pow(2, -14)) < 0.3
          && Math.abs(s.mesh().x(s.mesh().corner(f, 2)) * Math.pow(2, -14)) < 0.3;
      assertEquals(onRib, field.lowIsBad() && field.value(f) < field.bound(), "facet " + f);
    }
  }

  @Test
  void read_limitsOfOnesOwn_areUsed() {
    Specimen s = WallShapes.specimen(Mesher.mesh(WallShapes.block(20, 20, 2)),
        PrintLimits.standard().with(Limit.WALL, 2.5), 1);
    Concern c = new WallGauge().read(s).concerns().get(0);
    assertEquals(2.5, c.bound());
    assertEquals(2, c.measured(), CLOSE);
  }

  @Test
  void read_tipOfAPyramidUnderATop_isOnePlaceOnLargeFacets() {
    // sides 27 degrees from the level hold no ball: there are balls on both sides of the tip, but it is one tip
    double foot = 5 * 3.6 / 2.6;
    Solid roof = Specimens.along(2 * foot, -foot, -1, foot, -1, 0, 2.6).move(0, -foot, 0);
    Solid plate = WallShapes.block(60, 40, 3).cut(Solid.common(roof, roof.turn(Axis.Z, 90)).move(3, 2, 0));
    Concern c = only(plate);
    assertEquals(0.4, c.measured(), CLOSE);
    assertAt(c, 3, 2, 2.8, 0.05);
    FacetField field = new WallGauge().read(WallShapes.specimen(plate).mapped()).fields().get(0);
    boolean found = false;
    for (int f = 0; f < field.size(); f++) {
      for (FacetField.Place place : field.places(f)) {
        found |= place.value() < 0.9;
        assertTrue(place.value() > 0.9 || Math.hypot(place.x() - 3, place.y() - 2) < 2, place.toString());
        assertEquals(1.8, field.background(f));
      }
    }
    assertTrue(found);
  }

  @Test
  void read_mappedNeck_isPaintedBesideItsEdge() {
    FacetField field = new WallGauge().read(WallShapes.specimen(Mesher.mesh(notched(0.3, 30, 0))).mapped()).fields().get(0);
    int painted = 0;
    for (int f = 0; f < field.size(); f++) {
      for (FacetField.Place place : field.places(f)) {
        painted += place.value() < 0.45 ? 1 : 0;
        assertTrue(place.value() > 0.45 || Math.hypot(place.x(), place.y() - 3) < 0.2, place.toString());
      }
    }
    assertTrue(painted > 10, painted + " places");
  }
}
