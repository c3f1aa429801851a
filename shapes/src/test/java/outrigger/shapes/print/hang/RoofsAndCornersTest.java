package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Roofs that close over a gap, and ledges whose rim the layer's middle shows elsewhere than its lower face. */
class RoofsAndCornersTest {
  private static final double[] TURNS = {0, 23, 71.3, 135};

  private static List<Concern> concerns(Solid solid, double turn) {
    return new OverhangGauge().read(Specimens.of(solid.turn(Axis.Z, turn))).concerns();
  }

  private static Concern only(String rule, Severity severity, Solid solid, double turn) {
    List<Concern> told = concerns(solid, turn);
    assertEquals(List.of(rule), told.stream().map(Concern::rule).toList(), "turned by " + turn + ": " + told);
    assertEquals(severity, told.get(0).severity(), "turned by " + turn + ": " + told);
    return told.get(0);
  }

  private static double tan(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }

  /** A block with a tunnel along Y. */
  private static Solid tunnel(double... section) {
    return Specimens.box(0, 0, 0, 30, 10, 25).cut(Specimens.along(12, section).move(0, -1, 0));
  }

  /** Fact of the trade: a roof as narrow as that of a round hole of 6 mm holds, whether round, pointed or a dome. */
  @Test
  void roofAsNarrowAsThatOfASmallHole_passes() {
    Solid block = Specimens.box(-10, -10, 0, 20, 20, 20);
    List<Solid> parts = List.of(Prism.of(Profile.post(12), 0, 10).cut(Revolution.sphere(6)),
        tunnel(13, -1, 17, -1, 17, 8, 15, 8 + 2 / tan(60), 13, 8),
        block.cut(Prism.of(Profile.hole(4.2), -1, 8), Revolution.coneCutter(4.2, 0, 8, 8 + 2.1 / tan(59))),
        tunnel(12.5, 12, 13.2322, 10.2322, 15, 9.5, 16.7678, 10.2322, 17.5, 12, 16.7678, 13.7678, 15, 14.5,
            13.2322, 13.7678));
    for (Solid part : parts) {
      for (double turn : TURNS) {
        assertEquals(List.of(), concerns(part, turn), "part " + parts.indexOf(part) + " turned by " + turn);
      }
    }
    Solid drilled = Specimens.box(-15, -15, 0, 30, 30, 20)
        .cut(Prism.of(Profile.hole(12), -1, 8), Revolution.coneCutter(12, 0, 8, 8 + 6 / tan(59)));
    assertEquals(59, only("overhang", Severity.CAUTION, drilled, 0).measured(), 0.1);
  }

  /** Wherever layers begin: a layer may close up to a third of a roof's width, or its last few hundredths. */
  @Test
  void domeAndWindingTunnelOf8_leanAsFarOutInAllHeights() {
    Profile bore = Profile.post(8).move(14, 0);
    for (double up : new double[] {0, 0.03, 0.06, 0.1, 0.13, 0.17}) {
      Solid dome = Prism.of(Profile.post(14), 0, 10).cut(Revolution.sphere(8).move(0, 0, up));
      Solid elbow = Specimens.box(0, 0, 0, 30, 30, 20).cut(new Revolution(bore, 96, false).move(0, 0, 8 + up));
      for (double turn : TURNS) {
        only("overhang", Severity.CAUTION, dome, turn);
        only("overhang", Severity.CAUTION, elbow, turn);
      }
    }
  }

  /** How far a gable stands out is half its width, however its last layer closes. */
  @Test
  void gable_standsOutHalfItsWidth() {
    for (double lean : new double[] {65, 70, 72, 76, 80}) {
      List<Concern> told = concerns(tunnel(7, -1, 23, -1, 23, 8, 15, 8 + 8 / tan(lean), 7, 8), 0);
      assertTrue(told.size() == 1 && told.get(0).message().contains("stands out 8 mm"), lean + ": " + told);
    }
  }

  /** The round ends of a slot of 5 mm are those of a hole as wide: what is left is the flat roof, 19 mm and 2 mm of them. */
  @Test
  void slotOnItsSide_isABridgeAlone() {
    Solid slot = Specimens.box(0, 0, 0, 40, 6, 30)
        .cut(Prism.of(Profile.slot(24, 5), -20, 20).turn(Axis.X, 90).move(20, 3, 15));
    for (double turn : TURNS) {
      Concern bridge = only("bridge", Severity.CAUTION, slot, turn);
      assertTrue(bridge.measured() > 19 && bridge.measured() < 21.2, bridge.toString());
    }
  }

  /** A roof that is flat between two slopes leans as these do: the flat part is held at both ends. */
  @Test
  void trapezoidRoof_leansAsItsSides() {
    double high = 8 + 5 / tan(50);
    Concern slope = only("overhang", Severity.CAUTION, tunnel(7, -1, 23, -1, 23, 8, 18, high, 12, high, 7, 8), 0);
    assertEquals(50, slope.measured(), 0.05);
  }

  /** A flat arch is no hole of its circle's width. */
  @Test
  void flatArch_isToldAsOne() {
    double radius = (10 * 10 + 3 * 3) / 6.0;
    double[] section = new double[4 + 2 * 41];
    section[0] = 5;
    section[1] = -1;
    section[2] = 25;
    section[3] = -1;
    double half = StrictMath.asin(10 / radius);
    for (int i = 0; i <= 40; i++) {
      section[4 + 2 * i] = 15 + radius * StrictMath.sin(half - i * half / 20);
      section[5 + 2 * i] = 13 - radius + radius * StrictMath.cos(half - i * half / 20);
    }
    Concern arch = only("round-roof", Severity.CAUTION, tunnel(section), 0);
    assertTrue(arch.message().startsWith("the round roof of an arch, curved like a hole of 36.3"), arch.message());
    Concern hole = only("round-roof", Severity.CAUTION, Specimens.holed(8, 9), 0);
    assertTrue(hole.message().startsWith("the roof of a round hole of 8"), hole.message());
  }

  /** Fact of the trade: a ledge is as wide as its edges stand out, though its corners stand out 1.41 times as far. */
  @Test
  void squareDripEdge_passesUpToTheLimitOfALedge() {
    Solid block = Specimens.box(-15, -15, 0, 30, 30, 10);
    for (double turn : TURNS) {
      for (double wide : new double[] {0.36, 0.4, 0.5}) {
        assertEquals(List.of(), concerns(block.join(dripEdge(wide)), turn), wide + " turned by " + turn);
      }
      Concern corner = only("ledge", Severity.CAUTION, block.join(dripEdge(0.55)), turn);
      assertEquals(0.55 * Math.sqrt(2), corner.measured(), 0.005);
      assertEquals(15.55 * Math.sqrt(2), Math.hypot(corner.x(), corner.y()), 0.01);
    }
  }

  /** Common practice: over a bore for a screw's head two layers close the screw's hole, which is drilled through after. */
  @Test
  void bottomOfABoreRoundAHole_mayBeBridged() {
    Solid plate = Specimens.box(-10, -10, 0, 20, 20, 8).cut(Prism.of(Profile.hole(2.2), -1, 9));
    for (Profile head : List.of(Profile.hexagon(5), Profile.hole(4.4))) {
      Concern ledge = only("ledge", Severity.CAUTION, plate.cut(Prism.of(head, -1, 3)), 0);
      assertTrue(ledge.advice().startsWith("Close the hole in it with two layers"), ledge.advice());
    }
    Concern round = only("ledge", Severity.CAUTION, plate.cut(Prism.of(Profile.hole(4.4), -1, 3)), 0);
    assertTrue(round.message().contains("held on its outer side only"), round.message());
    Solid wide = plate.cut(Prism.of(Profile.hole(9.6), -1, 9), Prism.of(Profile.hole(12), -1, 3));
    assertTrue(only("ledge", Severity.CAUTION, wide, 0).advice().startsWith("Carry it"));
  }

  /** Steps of a ledge each, one layer high, are no ledges that pass. */
  @Test
  void squareSteps_addUpAtTheirCornersToo() {
    Solid stairs = Specimens.box(-5, -5, 0, 10, 10, 5);
    for (int i = 1; i < 8; i++) {
      stairs = stairs.join(Specimens.box(-5 - 0.4 * i, -5 - 0.4 * i, 5 + 0.2 * (i - 1), 10 + 0.8 * i, 10 + 0.8 * i, 0.2));
    }
    for (double turn : TURNS) {
      assertTrue(concerns(stairs, turn).stream().anyMatch(c -> c.message().startsWith("an underside in steps leans ")),
          concerns(stairs, turn).toString());
    }
  }

  private static Solid dripEdge(double wide) {
    return Specimens.box(-15 - wide, -15 - wide, 10, 30 + 2 * wide, 30 + 2 * wide, 2);
  }

  /** A pocket 1.2 mm deep stands out so far along its back: no bridge of its 32 mm not to be tried. */
  @Test
  void widePocketOfLittleDepth_isALedge() {
    Solid wall = Specimens.box(0, 0, 0, 20, 40, 20).cut(Specimens.box(-1, 4, 6, 2.2, 32, 6));
    for (double turn : TURNS) {
      assertEquals(1.2, only("ledge", Severity.CAUTION, wall, turn).measured(), 0.01);
    }
  }

  /** What goes on by a slope within the limit from a ledge, or narrows from it at once, changes nothing of the ledge. */
  @Test
  void ledge_isAsWideAsItsLowerFace() {
    Solid widens = Specimens.along(8, 0, 0, 10, 0, 10, 5, 11.5, 5, 16.5, 10, 0, 10);
    Solid narrows = Specimens.along(8, 0, 0, 10, 0, 10, 5, 11.2, 5, 10, 8, 0, 8);
    Solid barb = Prism.of(Profile.post(6), 0, 10).join(Revolution.cone(8.4, 4, 10, 13));
    Solid branch = Prism.of(Profile.post(6), 0, 20).join(Specimens.along(4, 0, 10, 5, 10, 15, 20, 10, 20).move(0, -2, 0));
    for (double turn : TURNS) {
      assertEquals(1.5, only("ledge", Severity.CAUTION, widens, turn).measured(), 0.01);
      assertEquals(1.2, only("ledge", Severity.CAUTION, narrows, turn).measured(), 0.01);
      assertEquals(1.2, only("ledge", Severity.CAUTION, barb, turn).measured(), 0.02);
      assertEquals(Math.hypot(5, 2) - 3, only("ledge", Severity.ERROR, branch, turn).measured(), 0.02);
    }
  }

  /** A cap all round its stem is not held on one side. */
  @Test
  void capRoundItsStem_isHeldOnItsInnerSide() {
    Solid cap = Prism.of(Profile.post(6), 0, 12).join(Prism.of(Profile.post(16), 12, 14));
    assertTrue(only("ledge", Severity.ERROR, cap, 0).message().contains("held on its inner side only"));
    Solid shelf = Specimens.along(8, 0, 0, 10, 0, 10, 5, 13, 5, 13, 9, 0, 9);
    assertTrue(only("ledge", Severity.ERROR, shelf, 0).message().contains("held on one side only"));
  }

  /** Tips in the air under one table top that leans: one concern, at the lowest and largest, which counts the others. */
  @Test
  void severalIslandsThatGrowTogether_areCounted() {
    Solid post = Specimens.box(-20, -2, 0, 4, 4, 20);
    Solid drops = Solid.union(Revolution.cone(2, 12, 12, 16).move(-5, 0, 0), Revolution.cone(1, 11, 12, 16).move(4, 0, 0),
        Specimens.box(-20, -2, 16, 30, 4, 4));
    Concern island = only("island", Severity.ERROR, post.join(drops), 23);
    assertEquals(2, island.measured(), 0.3);
    assertTrue(island.message().contains(", as it does at 1 place more that grow together with it"), island.message());
  }

  /** The last layer of a short slope is a strip held along one side, half of its rim, an end or not: it closes nothing. */
  @Test
  void read_shortSlope_isToldWhereverItEndsInALayer() {
    for (int i = 0; i < 20; i++) {
      double from = 5 + 0.01 * i;
      Solid slope = Specimens.along(5.5, 0, 0, 10, 0, 10, from, 11, from + 0.57, 11, 9, 0, 9);
      for (Solid part : List.of(slope, Solid.union(slope, Specimens.box(0, -2, 0, 14, 2, 9)))) {
        for (double turn : new double[] {0, 37, 90, 222}) {
          List<Concern> told = concerns(part, turn);
          assertEquals(List.of("overhang"), told.stream().map(Concern::rule).toList(), from + " mm up, turned by " + turn);
        }
      }
    }
  }

  /** A cap whose sides lean out as far as they may: its rim at a layer's middle lies up to a layer beside its lower face. */
  @Test
  void read_capThatWidensUpward_isALedgeAtAnyHeight() {
    for (int i = 0; i < 20; i++) {
      double from = 6.9 + 0.01 * i;
      Solid cap = Solid.union(Prism.of(Profile.post(12), 0, 1), Prism.of(Profile.post(2.4), 0, from + 0.5),
          Revolution.cone(6, 6 + 2 * 3 * tan(44), from, from + 3));
      for (double turn : new double[] {0, 45}) {
        assertEquals(1.8, only("ledge", Severity.ERROR, cap, turn).measured(), 0.05, from + " mm up");
      }
    }
  }
}
