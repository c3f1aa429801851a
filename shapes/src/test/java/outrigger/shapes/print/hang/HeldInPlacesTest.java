package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Undersides held in several places, round holes, along walls and round columns: what is bridged and what is not. */
class HeldInPlacesTest {
  private static final double[] TURNS = {0, 23, 71.3, 135};

  private static List<Concern> concerns(Solid solid, double turn) {
    return new OverhangGauge().read(Specimens.of(solid.turn(Axis.Z, turn))).concerns();
  }

  private static Concern only(String rule, Solid solid, double turn) {
    List<Concern> told = concerns(solid, turn);
    assertEquals(List.of(rule), told.stream().map(Concern::rule).toList(), "turned by " + turn + ": " + told);
    return told.get(0);
  }

  private static Concern of(String rule, List<Concern> told) {
    return told.stream().filter(c -> c.rule().equals(rule)).findFirst().orElseThrow(() -> new AssertionError(told));
  }

  private static Solid posts(int rows, double gap, double wider) {
    List<Solid> parts = new ArrayList<>();
    double apart = 2 + gap;
    for (int i = 0; i < rows * rows; i++) {
      parts.add(Specimens.box(i % rows * apart, i / rows * apart, 0, 2, 2, 5));
    }
    double width = (rows - 1) * apart + 2 + 2 * wider;
    parts.add(Specimens.box(-wider, -wider, 5, width, width, 2));
    return Solid.union(parts);
  }

  /** However many posts there are, the way from one to the next is what is bridged (closed form). */
  @ParameterizedTest
  @CsvSource({"5, 12", "9, 12", "10, 4", "10, 12"})
  void plateOnPosts_spansTheWayFromOneToTheNext(int rows, double gap) {
    for (double turn : TURNS) {
      if (gap <= 10) {
        assertEquals(List.of(), concerns(posts(rows, gap, 0), turn), "turned by " + turn);
      } else {
        Concern bridge = only("bridge", posts(rows, gap, 0), turn);
        assertEquals(gap, bridge.measured(), 0.03, "turned by " + turn);
        double side = (rows - 1) * (2 + gap) + 2;
        assertEquals(side * side - 4 * rows * rows, bridge.area(), 0.1);
      }
    }
  }

  /** Lines beside a hole lie on both walls: its edge stands out as far as it lies from these, half its width. */
  @Test
  void holeInARoof_standsOutFromTheLinesBesideIt() {
    Solid wide = Specimens.box(-15, -15, 0, 30, 30, 12)
        .cut(Specimens.box(-11, -11, -1, 22, 22, 10), Prism.of(Profile.hole(6), -1, 20));
    Solid narrow = Specimens.box(-7.5, -15, 0, 15, 30, 12)
        .cut(Specimens.box(-4.5, -12, -1, 9, 24, 10), Prism.of(Profile.hole(4), -1, 20));
    for (double turn : TURNS) {
      List<Concern> told = concerns(wide, turn);
      assertEquals(3, of("ledge", told).measured(), 0.05, told.toString());
      Concern bridge = of("bridge", told);
      assertEquals(22, bridge.measured(), 0.01);
      assertTrue(Math.hypot(bridge.x(), bridge.y()) > 3, "not in the hole: " + bridge);
      assertEquals(2, only("ledge", narrow, turn).measured(), 0.05);
    }
  }

  /** The inner edge of a ring lies on the lines from post to post, whichever way they run; the outer one beyond them. */
  @Test
  void ringOnPosts_standsOutBeyondTheLinesBetweenThem() {
    List<Solid> parts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      parts.add(Prism.of(Profile.post(4), 0, 12.1).move(15, 0, 0).turn(Axis.Z, 60 * i));
    }
    parts.add(Prism.of(Profile.post(36).cut(Profile.hole(24)), 12, 15));
    for (double turn : TURNS) {
      List<Concern> told = concerns(Solid.union(parts), turn);
      Concern ledge = of("ledge", told);
      assertEquals(18 - 15 * StrictMath.cos(Math.PI / 6) - 2, ledge.measured(), 0.06, told.toString());
      assertEquals(18, Math.hypot(ledge.x(), ledge.y()), 0.06);
      assertEquals(Math.PI * (18 * 18 - 12 * 12 - 6 * 4), ledge.area() + of("bridge", told).area(), 6);
    }
  }

  /** Of two bays alike one is told, not the gusset between them. */
  @Test
  void shelfOnThreeGussets_isToldInABay() {
    Solid shelf = Solid.union(Specimens.box(0, 0, 0, 4, 30, 20), Specimens.box(0, 0, 16, 12, 30, 3), gusset(0), gusset(14),
        gusset(28));
    for (double turn : TURNS) {
      Concern bridge = only("bridge", shelf, turn);
      assertEquals(12, bridge.measured(), 0.01);
      double angle = StrictMath.toRadians(turn);
      double y = bridge.y() * StrictMath.cos(angle) - bridge.x() * StrictMath.sin(angle);
      assertEquals(7, Math.abs(y - 15), 0.1, bridge.toString());
    }
  }

  private static Solid gusset(double y) {
    return Specimens.along(2, 4, 8, 12, 16, 4, 16).move(0, y, 0);
  }

  /** A shelf round the inside of a tube stands out by its width: lines that graze the inside carry nothing of that. */
  @Test
  void shelfRoundTheInsideOfATube_isALedgeAlone() {
    Solid tube = Prism.of(Profile.post(40).cut(Profile.hole(36)), 0, 20);
    for (double turn : TURNS) {
      Concern ledge = only("ledge", tube.join(Prism.of(Profile.post(36.6).cut(Profile.hole(30)), 12, 14)), turn);
      assertEquals(3, ledge.measured(), 0.03);
      assertEquals(Math.PI * (18 * 18 - 15 * 15), ledge.area(), 1);
    }
  }

  /** The corners beside a gusset that carries the middle of a shelf alone stand out as far as it is from there. */
  @Test
  void shelfOnOneGusset_isALedgeOnBothSides() {
    Solid shelf = Solid.union(Specimens.box(0, 0, 0, 3, 20, 30), Specimens.box(0, 0, 25, 25, 20, 3),
        Specimens.along(3, 3, 3, 25, 25, 3, 25).move(0, 8, 0));
    for (double turn : TURNS) {
      assertEquals(9, only("ledge", shelf, turn).measured(), 0.01);
    }
  }

  /** Stems 7 to 7.6 mm apart: lines between them are within the limit, whatever stands out beyond. */
  @Test
  void capOnThreeStems_isNoBridge() {
    Solid stem = Prism.of(Profile.post(5), 0, 12);
    Solid cap = Solid.union(stem.move(-6, -4, 0), stem.move(6, -4, 0), stem.move(0, 7, 0),
        Prism.of(Profile.post(24), 12, 15));
    for (double turn : TURNS) {
      Concern ledge = only("ledge", cap, turn);
      assertTrue(ledge.measured() > 5 && ledge.measured() < 7, ledge.toString());
      assertTrue(ledge.message().contains("beside what is bridged"), ledge.message());
    }
  }

  /** Lines that leave what stands out alike are told as short as can be: from the wall to the post. */
  @Test
  void plateOnAWallAndAPost_spansTheWayBetween() {
    Solid plate = Solid.union(Specimens.box(0, 0, 0, 3, 20, 10), Specimens.box(15, 8, 0, 4, 4, 10),
        Specimens.box(0, 0, 10, 19, 20, 2));
    for (double turn : TURNS) {
      List<Concern> told = concerns(plate, turn);
      assertEquals(12, of("bridge", told).measured(), 0.02, told.toString());
      assertEquals(8, of("ledge", told).measured(), 0.02, told.toString());
    }
  }

  /** Steps of a ramp round a column of 8 mm reach 12 mm from its axis: none stands out further than that from the column. */
  @Test
  void rampRoundAColumn_standsOutFromTheColumn() {
    List<Solid> parts = new ArrayList<>();
    parts.add(Prism.of(Profile.post(8), 0, 16));
    for (int i = 0; i < 30; i++) {
      parts.add(Specimens.box(0, -2, 1 + i * 0.35, 12, 4, 1.5).turn(Axis.Z, 15 * i));
    }
    for (double turn : new double[] {0, 23}) {
      Concern ledge = only("ledge", Solid.union(parts), turn);
      assertEquals(Math.hypot(12, 2) - 4, ledge.measured(), 0.25);
    }
  }

  /** Two planes are no round hole, though a circle runs through any three lines. */
  @Test
  void gabledRoof_isASlope() {
    double high = 8 / StrictMath.tan(StrictMath.toRadians(50));
    Solid gable = Specimens.box(0, 0, 0, 30, 10, 25)
        .cut(Specimens.along(12, 7, -1, 23, -1, 23, 8, 15, 8 + high, 7, 8).move(0, -1, 0));
    for (double turn : TURNS) {
      Concern slope = only("overhang", gable, turn);
      assertEquals(50, slope.measured(), 0.05);
      assertEquals(160, slope.area(), 0.5);
    }
  }

  /** A lean of just 60 degrees is a caution in all turns, as rounding to the grid leans faces by less than 0.25. */
  @Test
  void leanOf60Degrees_isACautionHoweverTurned() {
    for (double turn = 0; turn < 360; turn += 31) {
      Concern lean = only("overhang", Specimens.box(-10, -10, -10, 20, 20, 20).turn(Axis.X, 30), turn);
      assertEquals(Severity.CAUTION, lean.severity(), "turned by " + turn);
    }
  }
}
