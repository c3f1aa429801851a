package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Parts turned any way, whose rounding leaves facets a grid step or two high that face anywhere: no wall, neck or edge of
 * nothing is found at them, and walls they lie on are told all the same.
 */
class NeedlesTest {
  private static final long SEED = 2811;

  private static List<Concern> read(Solid solid, Random random) {
    Solid turned = solid.turn(Axis.X, 360 * random.nextDouble()).turn(Axis.Y, 360 * random.nextDouble())
        .turn(Axis.Z, 360 * random.nextDouble());
    return new WallGauge().read(new Specimen(Proof.of(turned).proven().orElseThrow(), PrintLimits.standard(),
        Map.of(), Workers.of(1))).concerns();
  }

  @Test
  void read_conicalPocketTurned_raisesNoAlarm() {
    Solid block = WallShapes.block(12, 12, 8).cut(Revolution.coneCutter(0.02, 6, 4.2, 8.1));
    Random random = new Random(SEED);
    for (int i = 0; i < 8; i++) {
      assertEquals(List.of(), read(block, random), SEED + ", turn " + i);
    }
  }

  @Test
  void read_coneShellTurned_isOneWall() {
    Solid shell = Revolution.cone(20, 4, 0, 20).cut(Revolution.coneCutter(18.8, 2.8, -0.001, 20.001));
    Random random = new Random(SEED);
    for (int i = 0; i < 4; i++) {
      List<Concern> told = read(shell, random);
      assertEquals(1, told.size(), SEED + ", turn " + i + ": " + told);
      assertEquals("thin-wall", told.get(0).rule());
      // 0.6 mm across, less the chords, along the normal
      assertEquals(0.547, told.get(0).measured(), 0.012);
    }
  }
}
