package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Specimen;

/** What winds round a core stands out from the core, not from where it began: threads, twisted bars, spiral grooves. */
class CoilsTest {
  private static final int SIDES = 96;

  /** A bar whose section turns as it rises; its radius by the part of a turn, 0 to 1. */
  private static Specimen coil(DoubleUnaryOperator radius, double pitch, double turns) {
    int levels = (int) Math.round(turns * SIDES);
    int[] xyz = new int[3 * (SIDES * (levels + 1) + 2)];
    for (int i = 0; i <= levels; i++) {
      for (int k = 0; k < SIDES; k++) {
        double r = radius.applyAsDouble((double) Math.floorMod(k - i, SIDES) / SIDES);
        put(xyz, i * SIDES + k, r * StrictMath.cos(2 * Math.PI * k / SIDES), r * StrictMath.sin(2 * Math.PI * k / SIDES),
            pitch * i / SIDES);
      }
    }
    int bottom = SIDES * (levels + 1);
    put(xyz, bottom, 0, 0, 0);
    put(xyz, bottom + 1, 0, 0, pitch * levels / SIDES);
    int[] facets = IntStream.range(0, SIDES).flatMap(k -> {
      int next = (k + 1) % SIDES;
      int last = levels * SIDES;
      return IntStream.concat(IntStream.of(bottom, next, k, bottom + 1, last + k, last + next),
          IntStream.range(0, levels).map(i -> i * SIDES).flatMap(o -> IntStream.of(o + k, o + next, o + SIDES + next,
              o + k, o + SIDES + next, o + SIDES + k)));
    }).toArray();
    return new Specimen(Proof.judge(Mesh.of(xyz, facets)).proven().orElseThrow(), PrintLimits.standard(), Map.of(),
        Workers.of(2));
  }

  private static void put(int[] xyz, int vertex, double x, double y, double z) {
    xyz[3 * vertex] = (int) Math.rint(x * Grid.PER_MM);
    xyz[3 * vertex + 1] = (int) Math.rint(y * Grid.PER_MM);
    xyz[3 * vertex + 2] = (int) Math.rint(z * Grid.PER_MM);
  }

  /** Rises from core to crest over half a turn less the flats, and falls again. */
  private static DoubleUnaryOperator thread(double crest, double deep) {
    return part -> crest - deep + deep * Math.min(1, Math.max(0, (1 - Math.abs(2 * part - 1) - 0.1) / 0.8));
  }

  private static double standsOut(Concern c) {
    return Double.parseDouble(c.message().replaceAll(".*stands out ([0-9.]+) mm.*", "$1"));
  }

  /** However many turns there are, a thread stands out as far as it is deep, less a last step within the limit. */
  @Test
  void thread_standsOutFromItsCore() {
    for (double turns : new double[] {1, 2.5, 4}) {
      List<Concern> told = new OverhangGauge().read(coil(thread(10, 1.35), 2.5, turns)).concerns();
      assertEquals(1, told.size(), told.toString());
      assertEquals("overhang", told.get(0).rule());
      assertEquals(1.35, standsOut(told.get(0)), 0.15, turns + " turns: " + told.get(0).message());
    }
  }

  /** One no deeper than a ledge may be is printed, however steep its flanks. */
  @Test
  void shallowThread_passes() {
    assertEquals(List.of(), new OverhangGauge().read(coil(thread(10, 0.45), 0.8, 4)).concerns());
  }

  /** A square bar twisted by half a turn stands out from the round bar that fits into it. */
  @Test
  void twistedBar_standsOutFromWhatIsSolidAllTheWayDown() {
    DoubleUnaryOperator square = part -> 10 / StrictMath.cos((part * 4 - Math.floor(part * 4) - 0.5) * Math.PI / 2);
    for (Concern c : new OverhangGauge().read(coil(square, 40, 0.5)).concerns()) {
      assertTrue(standsOut(c) <= 10 * (Math.sqrt(2) - 1) + 0.05, c.message());
    }
  }

  /** So does what is left beside a spiral groove. */
  @Test
  void spiralGroove_isNoFurtherOutThanItIsDeep() {
    DoubleUnaryOperator groove = part -> part < 0.08 ? 8.6 : 10;
    for (Concern c : new OverhangGauge().read(coil(groove, 40, 0.75)).concerns()) {
      assertTrue(standsOut(c) <= 1.5, c.message());
    }
  }
}
