package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

class GapGaugeTest {
  private static final double CLOSE = 0.01;
  private static final long SEED = 20;

  private static List<Concern> read(Solid solid) {
    return new GapGauge().read(WallShapes.specimen(solid)).concerns();
  }

  private static Concern only(Solid solid) {
    List<Concern> concerns = read(solid);
    assertEquals(1, concerns.size(), concerns.toString());
    return concerns.get(0);
  }

  private static Solid holed(Profile hole, double thickness) {
    return Prism.of(Profile.rectangle(20, 20).cut(hole), 0, thickness);
  }

  @Test
  void read_twoPlates_findsTheGapBetween() {
    Solid plates = WallShapes.block(20, 20, 3).join(WallShapes.block(20, 20, 3).move(0, 0, 3.3));
    for (Solid solid : List.of(plates, WallShapes.turned(plates))) {
      Concern c = only(solid);
      assertEquals("narrow-gap", c.rule());
      assertEquals(0.3, c.measured(), CLOSE);
      assertEquals(2 * 20 * 20, c.area(), 8);
      assertEquals(Severity.CAUTION, c.severity());
    }
    assertEquals(3.15, only(plates).z(), CLOSE);
  }

  @Test
  void read_holes_areToldBelowTheLimit() {
    for (double diameter : new double[] {0.4, 1, 1.5, 1.9}) {
      for (Solid solid : List.of(holed(Profile.hole(diameter), 5), WallShapes.turned(holed(Profile.hole(diameter), 5)),
          holed(Profile.hole(diameter), 5).turn(Axis.X, 90))) {
        Concern c = only(solid);
        assertEquals("small-hole", c.rule());
        assertEquals(diameter, c.measured(), CLOSE);
      }
    }
    assertEquals(List.of(), read(holed(Profile.hole(2.1), 5)));
  }

  /** Each is told, however little stands between them. */
  @Test
  void read_holesBesideEachOther_areToldOneByOne() {
    for (double[] each : new double[][] {{1.2, 1.6}, {1.6, 2}, {0.5, 1}}) {
      List<Profile> holes = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        holes.add(Profile.hole(each[0]).move(each[1] * (i % 4 - 1.5), each[1] * (i / 4 - 1)));
      }
      Solid plate = Prism.of(Profile.rectangle(20, 20).cut(holes.toArray(Profile[]::new)), 0, 1.6);
      for (Solid solid : List.of(plate, WallShapes.turned(plate))) {
        List<Concern> concerns = read(solid);
        assertEquals(12, concerns.size(), concerns.toString());
        for (Concern c : concerns) {
          assertEquals("small-hole", c.rule());
          assertEquals(each[0], c.measured(), CLOSE);
        }
      }
    }
  }

  @Test
  void read_slots_closeBelowOneLine() {
    Concern c = only(holed(Profile.slot(10, 0.3), 5));
    assertEquals("narrow-gap", c.rule());
    assertEquals(0.3, c.measured(), CLOSE);
    assertEquals(List.of(), read(holed(Profile.slot(10, 0.6), 5)));
  }

  @Test
  void read_notchOfASharpAngle_isNotSaidToBeNothingWide() {
    Solid block = WallShapes.block(20, 10, 4).cut(Specimens.along(22, -0.2, 0, 0, -1.5, 0.2, 0).move(0, -11, 4.0001));
    List<Concern> told = new GapGauge().read(WallShapes.specimen(block)).concerns();
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).message().startsWith("the gap runs out to nothing, narrower"), told.get(0).message());
  }

  /** Turned off the axes, edges of the slit's wall and of the plate part by less than a grid step. */
  @Test
  void read_slitBetweenKnuckles_isAsWideHoweverTurned() {
    Profile knuckle = Profile.post(8).move(0, 4).join(Profile.rectangle(8, 4).move(0, 2));
    Solid hinge = Specimens.box(0, 0, 0, 40, 10, 3)
        .join(Prism.of(knuckle, -4.5, 0).turn(Axis.X, 90), Prism.of(knuckle, -9.7, -4.7).turn(Axis.X, 90))
        .cut(Specimens.box(-9, 4.5, -1, 19, 0.2, 10));
    Random random = new Random(SEED);
    for (int i = 0; i < 24; i++) {
      double turn = 90 * random.nextDouble();
      Concern c = only(hinge.turn(Axis.Z, turn).move(random.nextDouble(), random.nextDouble(), random.nextDouble()));
      assertEquals(0.2, c.measured(), CLOSE, "seed " + SEED + ", turned by " + turn);
    }
  }

  @Test
  void read_bodiesCornerToCorner_leaveAGapAlongTheirEdges() {
    for (double apart : new double[] {0.2, 0.3, 0.4}) {
      Solid towers = Specimens.box(0, 0, 0, 10, 10, 10).join(Specimens.box(10 + apart, 10 + apart, 0, 10, 10, 10),
          Specimens.box(0, 0, 0, 20 + apart, 20 + apart, 1));
      for (Solid solid : List.of(towers, WallShapes.turned(towers))) {
        List<Concern> told = new GapGauge().read(WallShapes.specimen(solid)).concerns();
        assertEquals(apart < 0.31 ? 1 : 0, told.size(), told.toString());
        if (!told.isEmpty()) {
          assertEquals("narrow-gap", told.get(0).rule());
          assertEquals(apart * Math.sqrt(2), told.get(0).measured(), 0.005);
          assertTrue(told.get(0).message().matches(".* along (8[.][5-9]|9|9[.][0-5]) mm: .*"), told.get(0).message());
        }
      }
    }
  }

  @Test
  void read_engravedStroke_isAGroove() {
    Solid cut = WallShapes.block(20, 12, 4).cut(Prism.of(Profile.text("I", 6, 0.3).move(-1, -3), 3.4, 5));
    Concern c = only(cut);
    assertEquals("narrow-groove", c.rule());
    // the ball on the rounded end rests on its ground too, and stops within a tenth of the width
    assertEquals(0.3, c.measured(), 0.03);
  }

  @Test
  void read_goodForms_raiseNoAlarm() {
    Solid plate = WallShapes.block(20, 20, 3);
    Map<String, Solid> good = Map.of("block", plate, "inner corners", plate.join(WallShapes.block(10, 10, 12)), "stroke",
        WallShapes.block(40, 12, 2).join(Prism.of(Profile.text("FRONT 3", 6, 0.8).move(-15, -3), 1.5, 2.5)), "hole",
        holed(Profile.hole(3.6), 5), "tube", WallShapes.tube(10, 6, 0, 10), "post on a plate",
        plate.join(Prism.of(Profile.post(4), 2, 12)), "gap of 0.5", plate.join(plate.move(0, 0, 3.5)));
    good.forEach((name, solid) -> {
      assertEquals(List.of(), read(solid), name);
      assertEquals(List.of(), read(WallShapes.turned(solid)), name + " turned");
    });
  }

  @Test
  void read_bothLimitsZero_saysThatNothingWasMeasured() {
    Specimen s = WallShapes.specimen(Mesher.mesh(holed(Profile.hole(1), 5)),
        PrintLimits.standard().with(Limit.GAP, 0).with(Limit.HOLE, 0), 1);
    Reading reading = new GapGauge().read(s);
    assertEquals(List.of(), reading.concerns());
    assertEquals(1, reading.notExamined().size());
  }
}
