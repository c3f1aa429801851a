package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** A ledge beside a bridge is told with its own part of the underside, and at the corner that stands out most. */
class LedgePartsTest {
  private static final double[] TURNS = {0, 23, 71.3};

  private static Solid box(double x, double y, double z, double sizeX, double sizeY, double sizeZ) {
    return Specimens.box(x, y, z, sizeX, sizeY, sizeZ);
  }

  /** The ledge stands out so far over so much, farthest at corners alike or all along an edge; the rest is a bridge. */
  private static void assertParts(Solid part, double out, double free, double bridged, double x, double y,
      boolean isAnywhere) {
    for (double turn : TURNS) {
      List<Concern> told = new OverhangGauge().read(Specimens.of(part.turn(Axis.Z, turn))).concerns();
      String words = "turned by " + turn + ": " + told;
      assertEquals(2, told.size(), words);
      Concern ledge = told.stream().filter(c -> c.rule().equals("ledge")).findFirst().orElseThrow();
      Concern bridge = told.stream().filter(c -> c.rule().equals("bridge")).findFirst().orElseThrow();
      assertEquals(out, ledge.measured(), 0.01, words);
      assertEquals(free, ledge.area(), 0.01 * free, words);
      assertTrue(ledge.message().contains(" mm2 seen from below"), words);
      assertEquals(bridged, bridge.area(), 0.01 * bridged, words);
      double c = StrictMath.cos(StrictMath.toRadians(turn));
      double s = StrictMath.sin(StrictMath.toRadians(turn));
      assertEquals(x, Math.abs(ledge.x() * c + ledge.y() * s), 0.05, words);
      double along = Math.abs(ledge.y() * c - ledge.x() * s);
      assertTrue(isAnywhere ? along < y + 0.05 : Math.abs(along - y) < 0.05, words);
    }
  }

  @Test
  void plateOnTwoWalls_standsOutBeyondTheirEnds() {
    Solid walls = Solid.union(box(-10, -10, 0, 3, 20, 10), box(7, -10, 0, 3, 20, 10));
    assertParts(walls.join(box(-12, -12, 10, 24, 24, 2)), 2 * Math.sqrt(2), 24 * 24 - 20 * 20, 14 * 20, 12, 12, false);
  }

  @Test
  void plateOnFourLegs_standsOutAllRound() {
    Solid legs = Solid.union(box(-10, -10, 0, 3, 3, 10), box(7, -10, 0, 3, 3, 10), box(-10, 7, 0, 3, 3, 10),
        box(7, 7, 0, 3, 3, 10));
    assertParts(legs.join(box(-12, -12, 10, 24, 24, 2)), 2 * Math.sqrt(2), 24 * 24 - 20 * 20, 20 * 20 - 36, 12, 12, false);
  }

  /** A wall round three sides carries like two walls: what is beyond its ends stands out from the last line across. */
  @Test
  void plateOnAWallRoundThreeSides_standsOutAtTheFourth() {
    Solid wall = box(-10, -10, 0, 20, 20, 10).cut(box(-8, -8, -1, 30, 16, 12));
    assertParts(wall.join(box(-10, -10, 10, 25, 20, 2)), 5, 100, 18 * 16, 15, 10, true);
  }

  /** A shelf in a corner is laid across it from wall to wall, and its far half stands out from the last line. */
  @Test
  void shelfInACorner_standsOutFromItsDiagonal() {
    Solid walls = Solid.union(box(-6, -6, 0, 20, 2, 20), box(-6, -6, 0, 2, 20, 20));
    assertParts(walls.join(box(-4, -4, 12, 8, 8, 2)), 4 * Math.sqrt(2), 32, 32, 4, 4, false);
  }

  /** Only one side stands out too far: the others, within the limit, are no part of it. */
  @Test
  void plateBeyondOneWall_isALedgeThereAlone() {
    Solid walls = Solid.union(box(-10, -10, 0, 3, 20, 10), box(7, -10, 0, 3, 20, 10));
    List<Concern> told = new OverhangGauge().read(Specimens.of(walls.join(box(-10.3, -10, 10, 24.3, 20, 2)))).concerns();
    Concern ledge = told.stream().filter(c -> c.rule().equals("ledge")).findFirst().orElseThrow();
    assertEquals(4, ledge.measured(), 0.01);
    assertEquals(80, ledge.area(), 0.1);
    assertTrue(ledge.message().endsWith("80 mm2 seen from below, within 4 x 20 mm"), ledge.message());
    assertEquals(12, ledge.x(), 0.01);
  }

  /** Held in the middle alone, a square plate stands out most at its corners; a round one alike all round. */
  @Test
  void plateOnOnePost_isToldWhereItStandsOutMost() {
    for (double turn : TURNS) {
      Solid post = box(-3, -3, 0, 6, 6, 10);
      Concern square = only(post.join(box(-8, -8, 10, 16, 16, 3)).turn(Axis.Z, turn));
      assertEquals(5 * Math.sqrt(2), square.measured(), 0.01);
      assertEquals(8 * Math.sqrt(2), Math.hypot(square.x(), square.y()), 0.02, square.toString());
      assertEquals(256 - 36, square.area(), 0.1);
      assertTrue(square.message().contains("into the air at its farthest corner, held"), square.message());
      Concern corner = only(box(-8, -8, 0, 6, 6, 10).join(box(-8, -8, 10, 16, 16, 3)).turn(Axis.Z, turn));
      assertEquals(8 * Math.sqrt(2), Math.hypot(corner.x(), corner.y()), 0.02, corner.toString());
      Concern round = only(Prism.of(Profile.post(6), 0, 10).join(Prism.of(Profile.post(16), 10, 13)).turn(Axis.Z, turn));
      assertEquals(5.5, Math.hypot(round.x(), round.y()), 2.4, round.toString());
      assertTrue(round.message().contains("into the air, held"), round.message());
    }
  }

  private static Concern only(Solid solid) {
    List<Concern> told = new OverhangGauge().read(Specimens.of(solid)).concerns();
    assertEquals(1, told.size(), told.toString());
    return told.get(0);
  }

  /** On many posts what is outside all of them is the ledge, but for rounding of what is turned. */
  @Test
  void plateOnManyPosts_isToldAtACorner() {
    List<Solid> parts = new ArrayList<>();
    for (int i = 0; i < 81; i++) {
      parts.add(box(i % 9 * 6 - 25, i / 9 * 6 - 25, 0, 2, 2, 5));
    }
    parts.add(Prism.of(Profile.rectangle(56, 56), 5, 7));
    for (double turn : TURNS) {
      Solid part = Solid.union(parts.toArray(Solid[]::new)).turn(Axis.Z, turn);
      Concern ledge = new OverhangGauge().read(Specimens.of(part)).concerns().stream().filter(c -> c.rule().equals("ledge"))
          .findFirst().orElseThrow();
      assertEquals(3 * Math.sqrt(2), ledge.measured(), 0.01);
      assertEquals(28 * Math.sqrt(2), Math.hypot(ledge.x(), ledge.y()), 0.05, ledge.toString());
      assertEquals(56 * 56 - 50 * 50, ledge.area(), 0.01, "not the whole underside: " + ledge);
    }
  }
}
