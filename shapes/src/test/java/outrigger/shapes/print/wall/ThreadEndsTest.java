package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;
import outrigger.shapes.print.ThreadedParts;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.solid.Solid;

/**
 * Threads cut off by the plane of an end run out in a feather of 30 degrees, which is blunt enough: nothing thin is found
 * there, however the part lies and its facets are rounded.
 */
class ThreadEndsTest {
  private static final long SEED = 2711;
  private static final int COPIES = 10;

  /** The part as it is, and turned, moved and every other time mirrored. */
  private static void assertNoConcern(Solid part) {
    Random random = new Random(SEED);
    Solid copy = part;
    for (int i = 0; i < COPIES; i++) {
      assertEquals(List.of(), new WallGauge().read(WallShapes.specimen(Mesher.mesh(copy))).concerns(),
          SEED + ", copy " + i);
      Placement turn = Placement.turn(Axis.X, 360 * random.nextDouble())
          .then(Placement.turn(Axis.Y, 360 * random.nextDouble())).then(Placement.turn(Axis.Z, 360 * random.nextDouble()))
          .then(Placement.move(20 * random.nextDouble(), 20 * random.nextDouble(), 20 * random.nextDouble()));
      copy = part.place(i % 2 == 0 ? turn.then(Placement.mirror(Axis.X)) : turn);
    }
  }

  /** Before the head the thread's flank overhangs a wedge of air. */
  @Test
  void bolt_raisesNoAlarm() {
    assertNoConcern(new ThreadedParts(5, 0.2, 0, 0.49, 36, 0.3).bolt(3.5));
    assertNoConcern(new ThreadedParts(4, 0.2, 0.2, 0.975, 48, 0.3).bolt(4));
  }

  @Test
  void rod_raisesNoAlarm() {
    assertNoConcern(new ThreadedParts(5, 0, 0, 0.975, 48, 0.3).rod(2));
    assertNoConcern(new ThreadedParts(8, 0, 0.2, 0.93, 64, 0.9).rod(1.5));
  }

  @Test
  void nut_raisesNoAlarm() {
    assertNoConcern(new ThreadedParts(5, 0.2, 0, 0.49, 96, 0.7).nut(5.5));
    assertNoConcern(new ThreadedParts(4, 0.3, 0, 0.975, 64, 0.55).nut(3));
    assertNoConcern(new ThreadedParts(5, 0.2, 0.4, 0.975, 24, 0.3).nut(2));
  }
}
