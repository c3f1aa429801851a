package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Plates on legs: laid from leg to leg along the edges, then across. Legs are 3 mm wide and 14 mm apart. */
class TablesTest {
  private static final double WIDE = 3;
  private static final double GAP = 14;
  private static final double[] TURNS = {0, 17.3, 45, 71};

  /** Legs in columns and rows under a plate that is wider by some on all sides. */
  private static Solid table(boolean round, int columns, int rows, double wider) {
    List<Solid> parts = new ArrayList<>();
    double apart = WIDE + GAP;
    Prism leg = Prism.of(round ? Profile.post(WIDE) : Profile.rectangle(WIDE, WIDE), 0, 10);
    for (int i = 0; i < columns * rows; i++) {
      parts.add(leg.move(i % columns * apart, i / columns * apart, 0));
    }
    double width = (columns - 1) * apart;
    double depth = (rows - 1) * apart;
    parts.add(Prism.of(Profile.rectangle(width + WIDE + 2 * wider, depth + WIDE + 2 * wider), 10, 12)
        .move(width / 2, depth / 2, 0));
    return Solid.union(parts.toArray(Solid[]::new));
  }

  private static Optional<Concern> told(String rule, Solid solid) {
    List<Concern> concerns = new OverhangGauge().read(Specimens.of(solid)).concerns();
    assertTrue(concerns.stream().allMatch(c -> c.rule().equals("bridge") || c.rule().equals("ledge")), concerns.toString());
    return concerns.stream().filter(c -> c.rule().equals(rule)).findFirst();
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "2, 2", "3, 2"})
  void squareLegs_spanIsTheirGap(int columns, int rows) {
    for (double turn : TURNS) {
      Solid table = table(false, columns, rows, 0).turn(Axis.Z, turn);
      assertEquals(GAP, told("bridge", table).orElseThrow().measured(), 0.01, "turned by " + turn);
      assertEquals(Optional.empty(), told("ledge", table), "turned by " + turn);
    }
  }

  /** What is outside all legs and what bridges join them is a ledge, farthest out at the plate's corners. */
  @ParameterizedTest
  @CsvSource({"2, 1, 0.3", "2, 2, 0.3", "2, 1, 1", "2, 2, 1", "3, 2, 2"})
  void plateWiderThanItsLegs_standsOutByThatMuch(int columns, int rows, double wider) {
    for (double turn : TURNS) {
      Solid table = table(false, columns, rows, wider).turn(Axis.Z, turn);
      assertEquals(GAP, told("bridge", table).orElseThrow().measured(), 0.01, "turned by " + turn);
      double ledge = told("ledge", table).map(Concern::measured).orElse(0.0);
      assertEquals(wider * Math.sqrt(2) <= 0.5 ? 0 : wider * Math.sqrt(2), ledge, 0.01, "turned by " + turn);
    }
  }

  /** Between round legs lines are the longer the nearer they run to where they only graze the legs. */
  @ParameterizedTest
  @CsvSource({"2, 1, 0", "2, 2, 0", "2, 1, 0.5", "2, 2, 0.5", "3, 2, 0"})
  void roundLegs_spanLiesBetweenGapAndMiddles(int columns, int rows, double wider) {
    double first = told("bridge", table(true, columns, rows, wider)).orElseThrow().measured();
    assertTrue(first >= GAP - 0.01 && first < GAP + 1, first + " mm");
    double corner = (WIDE / 2 + wider) * Math.sqrt(2) - WIDE / 2;
    for (double turn : TURNS) {
      Solid table = table(true, columns, rows, wider).turn(Axis.Z, turn);
      assertEquals(first, told("bridge", table).orElseThrow().measured(), 0.03, "turned by " + turn);
      assertEquals(corner, told("ledge", table).map(Concern::measured).orElse(0.0), 0.04, "turned by " + turn);
    }
  }

  @Test
  void threeLegs_spanIsTheirGap() {
    double apart = WIDE + GAP;
    double high = apart * Math.sqrt(0.75);
    Prism leg = Prism.of(Profile.post(WIDE), 0, 10);
    Solid table = Solid.union(leg, leg.move(apart, 0, 0), leg.move(apart / 2, high, 0),
        Prism.of(Profile.polygon(0, -1, apart, -1, apart + 0.9, 0.5, apart / 2 + 0.9, high + 0.5, apart / 2, high + 1,
            apart / 2 - 0.9, high + 0.5, -0.9, 0.5), 10, 12));
    for (double turn : TURNS) {
      assertEquals(GAP, told("bridge", table.turn(Axis.Z, turn)).orElseThrow().measured(), 0.5, "turned by " + turn);
      assertEquals(Optional.empty(), told("ledge", table.turn(Axis.Z, turn)), "turned by " + turn);
    }
  }

  /** Nothing is laid from hold to hold over a ceiling held all round: its corners make it no narrower. */
  @Test
  void ceilingHeldAllRound_spansItsWidth() {
    Solid room = Specimens.box(0, 0, 0, 24, 24, 12).cut(Specimens.box(6, 6, -1, 12, 12, 9));
    assertEquals(12, told("bridge", room).orElseThrow().measured(), 0.01);
  }

  /** Lines round a hole in a roof lie in the air: as far from the walls as before, or from the first lines beside it. */
  @Test
  void counterboreFromBelow_isALedgeRoundItsHole() {
    Solid plate = Specimens.box(-10, -10, 0, 20, 20, 10)
        .cut(Prism.of(Profile.hole(10), -1, 4), Prism.of(Profile.hole(5), 3, 11));
    assertEquals(2.5, told("ledge", plate).orElseThrow().measured(), 0.1);
  }

  /** A ledge beside a bridge is told where it stands out farthest, not in the middle of the bridge. */
  @Test
  void ledgeBesideABridge_isToldAtItsEdge() {
    Concern ledge = told("ledge", table(false, 2, 2, 2)).orElseThrow();
    assertEquals(8.5 + 2, Math.max(Math.abs(ledge.x() - 8.5), Math.abs(ledge.y() - 8.5)), 2.1);
    assertTrue(ledge.message().contains("beside what is bridged"), ledge.message());
  }
}
