package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** How level undersides are told: at the limits themselves, in steps, and held at both ends by no straight way. */
class LevelUndersidesTest {
  private static List<Concern> concerns(Solid solid) {
    return new OverhangGauge().read(Specimens.of(solid)).concerns();
  }

  private static Concern only(Solid solid) {
    List<Concern> found = concerns(solid);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  @Test
  void read_exactlyAtALimit_passesHoweverTurned() {
    List<Solid> parts = List.of(Specimens.table(10, 8), Specimens.holed(6, 9),
        Specimens.along(8, 0, 0, 10, 0, 10, 5, 10.5, 5, 10.5, 9, 0, 9));
    for (int degrees = 0; degrees < 360; degrees += 31) {
      for (Solid part : parts) {
        assertEquals(List.of(), concerns(part.turn(Axis.Z, degrees).move(0.3, -0.7, 0)), "turned by " + degrees);
      }
    }
  }

  /** Steps of 0.45 mm every 0.4 mm up lean 48.4 degrees: no worse than the slope they stand for. */
  @Test
  void read_levelSteps_areASlopeOnTheWhole() {
    double[] section = new double[4 + 4 * 10 + 4];
    section[2] = 10;
    for (int i = 0; i < 10; i++) {
      section[4 + 4 * i] = 10 + 0.45 * i;
      section[6 + 4 * i] = 10 + 0.45 * (i + 1);
      section[5 + 4 * i] = 4 + 0.4 * i;
      section[7 + 4 * i] = 4 + 0.4 * i;
    }
    section[44] = 14.5;
    section[45] = 12;
    section[47] = 12;
    Concern steps = only(Specimens.along(10, section));
    assertEquals("overhang", steps.rule());
    assertEquals(Severity.CAUTION, steps.severity());
    assertEquals(StrictMath.toDegrees(StrictMath.atan2(4.5, 4)), steps.measured(), 0.1);
    assertTrue(steps.message().startsWith("an underside in steps leans 48.4 degrees"), steps.message());
  }

  /** Twenty boxes on each other, each this much wider on all four sides, or on one where they are a tongue. */
  private static Solid steps(double out, boolean isTongue) {
    List<Solid> all = new ArrayList<>(List.of(Specimens.box(-8, -8, 0, 16, 16, 1)));
    for (int i = 1; i <= 20; i++) {
      double far = out * i;
      all.add(isTongue ? Specimens.box(-8, -0.4, 0.8 + 0.2 * i, 16 + far, 0.8, 0.2)
          : Specimens.box(-8 - far, -8 - far, 0.8 + 0.2 * i, 16 + 2 * far, 16 + 2 * far, 0.2));
    }
    return Solid.union(all.toArray(Solid[]::new));
  }

  /** Steps of fine sides, each shorter than a step is wide, have no corners. */
  @Test
  void read_roundStepsBeyondTheLimit_areASlope() {
    List<Solid> all = new ArrayList<>(List.of(Prism.of(Profile.post(8), 0, 1)));
    for (int i = 1; i <= 20; i++) {
      all.add(Prism.of(Profile.post(8 + 0.48 * i), 0.8 + 0.2 * i, 1 + 0.2 * i));
    }
    assertEquals("overhang", only(Solid.union(all.toArray(Solid[]::new))).rule());
  }

  /** At a corner of faces within the limit the edge between them leans further: no more a concern than on a smooth slope. */
  @Test
  void read_cornersOfStepsWithinTheLimit_areNone() {
    for (int degrees : new int[] {0, 31, 45}) {
      assertEquals(List.of(), concerns(steps(0.162, false).turn(Axis.Z, degrees)), "turned by " + degrees);
      assertEquals(List.of(), concerns(steps(0.195, false).turn(Axis.Z, degrees)), "turned by " + degrees);
      assertEquals("overhang", only(steps(0.24, false).turn(Axis.Z, degrees)).rule());
      assertEquals("overhang", only(steps(0.24, true).turn(Axis.Z, degrees)).rule());
    }
  }

  /** Half a ring from one leg to the other is held at both ends, but no straight line across it is. */
  @Test
  void read_archOfALevelRing_isNotSaidToBeHeldOnOneSide() {
    Solid ring = Prism.of(Profile.post(20).cut(Profile.hole(14)), 8, 10);
    List<Concern> told = concerns(Solid.union(ring, Specimens.box(-10, -1.5, 0, 3.5, 3, 9),
        Specimens.box(6.5, -1.5, 0, 3.5, 3, 9)));
    assertEquals(2, told.size(), told.toString());
    for (Concern c : told) {
      assertEquals("ledge", c.rule());
      assertTrue(c.message().contains("with no straight way across from hold to hold"), c.message());
    }
    assertTrue(only(Specimens.along(8, 0, 0, 10, 0, 10, 5, 13, 5, 13, 9, 0, 9)).message().contains("held on one side only"));
  }

  /** The roof of a long stroke cut into a wall is held all along the wall: no bridge from end to end. */
  @Test
  void read_longStrokeInAWall_isNoBridge() {
    for (double deep : new double[] {0.3, 0.45}) {
      for (double turn : new double[] {0, 37, 90}) {
        Solid wall = Specimens.box(0, 0, 0, 30, 5, 20).cut(Specimens.box(3, deep - 5, 8, 24, 5, 2));
        assertEquals(List.of(), concerns(wall.turn(Axis.Z, turn)), deep + " mm deep, turned by " + turn);
      }
    }
    assertEquals("bridge", only(Specimens.box(0, 0, 0, 30, 5, 20).cut(Specimens.box(3, -1, 8, 24, 9, 2))).rule());
  }

  /**
   * A block that ends a twentieth of a mm below an underside carries it, as layers see it: what stands out beside it is told
   * with its own area, though the middles of the underside's facets lie above the block.
   */
  @Test
  void read_mostOfAnUndersideCarriedAcrossASlit_tellsTheRest() {
    Solid part = Solid.union(Specimens.box(0, 0, 0, 2, 10, 12), Specimens.box(0, 0, 10, 30, 10, 2),
        Specimens.box(3, 0, 0, 21, 10, 9.95));
    for (double turn : new double[] {0, 37, 90}) {
      for (Solid stands : List.of(part, part.mirror(Axis.X))) {
        Concern ledge = only(stands.turn(Axis.Z, turn));
        assertEquals("ledge", ledge.rule());
        assertEquals(6, ledge.measured(), 0.01);
        assertEquals(60, ledge.area(), 0.1);
      }
    }
  }

  /** A lip hangs from a plate 10 mm beside its wall: it starts in the air, and 13 mm of the plate stand out beyond it. */
  @Test
  void read_ledgeBeyondAnIsland_isToldBesideIt() {
    Solid part = Solid.union(Specimens.box(0, 0, 0, 5, 10, 20), Specimens.box(0, 0, 16, 30, 10, 3),
        Specimens.box(15, 0, 12, 2, 10, 5));
    for (double turn : new double[] {0, 37, 90}) {
      List<Concern> told = concerns(part.turn(Axis.Z, turn));
      assertEquals(List.of("island", "ledge"), told.stream().map(Concern::rule).sorted().toList(), told.toString());
      for (Concern c : told) {
        assertEquals(c.rule().equals("island") ? 20 : 130, c.area(), 1, c.message());
        assertEquals(Severity.ERROR, c.severity());
      }
    }
  }
}
