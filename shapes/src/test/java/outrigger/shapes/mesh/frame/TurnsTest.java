package outrigger.shapes.mesh.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;

class TurnsTest {
  private static final Placement A = Placement.turn(Axis.X, 20).then(Placement.turn(Axis.Y, 7));
  private static final Placement B = Placement.turn(Axis.Z, 0.001).then(A);
  private static final Placement C = Placement.turn(Axis.Z, 0.002).then(A);

  private static Placement moved(Placement p, double x, double y, double z) {
    return p.then(Placement.move(x, y, z));
  }

  @Test
  void of_oneTurnSharedByMost_comesFirst() {
    List<Placement> turns = Turns.of(List.of(B, moved(A, 1, 2, 3), moved(A, 0, 2, 3)));
    assertEquals(List.of(moved(A, 0, 2, 3), B), turns);
  }

  @Test
  void of_turnsByLittle_beginsWithTheMiddleOne() {
    assertEquals(B, Turns.of(List.of(A, C, B)).get(0));
  }

  /** Neither is turned less from the other; where the other stands tells them apart. */
  @Test
  void of_twoHalfATurnFromEachOther_haveOneOrder() {
    Placement half = moved(Placement.turn(Axis.Y, 180).then(A), 1, 2, 3);
    assertEquals(Turns.of(List.of(A, half)), Turns.of(List.of(half, A)));
  }

  @Test
  void of_reorderedTurnedByQuartersOrMirrored_keepsItsOrder() {
    List<Placement> all = List.of(A, B, moved(A, 1, 2, 3), moved(C, -1, 0, 2), moved(B, 0.5, 0, 0));
    List<Placement> reordered = new ArrayList<>(all);
    Collections.reverse(reordered);
    assertEquals(Turns.of(all), Turns.of(reordered));
    for (Axis axis : Axis.values()) {
      for (Placement by : List.of(Placement.turn(axis, 90), Placement.mirror(axis), Placement.move(4, -8, 16))) {
        List<Placement> placed = all.stream().map(p -> p.then(by)).toList();
        assertEquals(Turns.of(all).stream().map(p -> p.then(by)).toList(), Turns.of(placed), by.toString());
      }
    }
  }

  /** Turns by so little that their sums differ by a little more or less than what counts as one. */
  @Test
  void of_turnsByNearlyNothing_haveOneOrder() {
    List<Placement> all = new ArrayList<>();
    for (double radians : new double[] {1.9732e-7, 1.2176e-4, 2.4858e-7}) {
      all.add(Placement.turn(Axis.Z, Math.toDegrees(radians)));
    }
    all.add(Placement.turn(Axis.Y, Math.toDegrees(5.2175e-7)));
    List<Placement> expected = Turns.of(all);
    for (int i = 0; i < 24; i++) {
      Collections.shuffle(all, new Random(i));
      assertEquals(expected, Turns.of(all));
    }
  }
}
