package outrigger.shapes.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

class PrintabilityTest {
  private static PrintReport report(Solid solid) {
    return Printability.examine(Specimens.of(solid));
  }

  /** A post with an arm whose underside leans 45 degrees. */
  private static Solid gusset() {
    return Specimens.along(8, 0, 0, 10, 0, 10, 10, 20, 20, 20, 26, 0, 26);
  }

  @Test
  void examine_goodShapes_findsNothing() {
    List<Solid> good = List.of(Specimens.box(0, 0, 0, 20, 20, 20), Prism.of(Profile.post(20), 0, 15), gusset(),
        Prism.of(Profile.rectangle(20, 14), 0, 10), Prism.of(Profile.rectangle(30, 30).cut(Profile.hole(8)), 0, 6));
    for (Solid solid : good) {
      assertEquals(List.of(), report(solid).concerns());
    }
  }

  @Test
  void examine_gussetUpsideDown_findsNothingButOnItsSideEither() {
    assertEquals(List.of(), report(gusset().turn(Axis.X, 90)).concerns());
  }

  @Test
  void examine_workers_giveTheSameReport() {
    for (Solid solid : List.of(gusset(), Specimens.table(14, 8), Specimens.holed(9, 12))) {
      PrintReport one = Printability.examine(
          new Specimen(Specimens.proven(solid), PrintLimits.standard(), Map.of(), Workers.of(1)));
      PrintReport many = Printability.examine(
          new Specimen(Specimens.proven(solid), PrintLimits.standard(), Map.of(), Workers.of(5)));
      assertEquals(one.concerns(), many.concerns());
      assertEquals(one.facts(), many.facts());
    }
  }

  @Test
  void examine_movedAndTurned_movesTheConcernsAlong() {
    Concern still = report(Specimens.table(30, 8)).concerns().get(0);
    Concern moved = report(Specimens.table(30, 8).turn(Axis.Z, 90).move(11, -7, 3)).concerns().get(0);
    assertEquals(still.rule(), moved.rule());
    assertEquals(still.measured(), moved.measured(), 0.01);
    assertEquals(-still.y() + 11, moved.x(), 0.05);
    assertEquals(still.x() - 7, moved.y(), 0.05);
    assertEquals(still.z() + 3, moved.z(), 1e-6);
  }

  @Test
  void limits_outOfRange_areRefused() {
    assertThrows(ShapeException.class, () -> PrintLimits.standard().with(Limit.OVERHANG, 95));
    assertThrows(ShapeException.class, () -> PrintLimits.standard().with(Limit.WALL, Double.NaN));
  }

  @Test
  void limits_everyOne_saysWhereItsStandardComesFrom() {
    for (Limit limit : Limit.values()) {
      assertTrue(limit.standing().length() > 10, limit.key());
      assertTrue(limit.standard() >= limit.least() && limit.standard() <= limit.most(), limit.key());
    }
  }

  @Test
  void unit_ofSmallFiles_isGuessedAndOthersAreNot() {
    assertTrue(UnitGuess.of(Specimens.proven(Specimens.box(0, 0, 0, 2, 1, 0.5)).measures()).orElseThrow()
        .contains("in inches, it would be 50.8 x 25.4 x 12.7 mm"));
    assertTrue(UnitGuess.of(Specimens.proven(Specimens.box(0, 0, 0, 0.25, 0.125, 0.0625)).measures()).orElseThrow()
        .contains("in metres, it would be 250.0 x 125.0 x 62.5 mm"));
    assertTrue(UnitGuess.of(Specimens.proven(Specimens.box(0, 0, 0, 6, 1, 1)).measures()).isEmpty());
  }
}
