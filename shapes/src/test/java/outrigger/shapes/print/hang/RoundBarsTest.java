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
import outrigger.shapes.solid.Solid;

/** Round bars from post to post: the middle of a layer may just meet their lowest edge. */
class RoundBarsTest {
  /** A handrail of 3 mm, its axis at a height, on posts of 4 mm. */
  private static Solid rail(double apart, double z) {
    return Prism.of(Profile.post(4), 0, 24).join(Prism.of(Profile.post(4).move(apart, 0), 0, 24),
        Prism.of(Profile.post(3), 0, apart).turn(Axis.Y, 90).move(0, 0, z),
        Prism.of(Profile.rectangle(apart + 10, 10).move(apart / 2, 0), 0, 2));
  }

  private static Concern bridge(Solid solid, String of) {
    List<Concern> told = new OverhangGauge().read(Specimens.of(solid)).concerns();
    List<Concern> bridges = told.stream().filter(c -> c.rule().equals("bridge")).toList();
    assertEquals(1, bridges.size(), of + ": " + told);
    // its sides may stand out from its first line by what a bar that lies on the bed does
    assertTrue(told.stream().allMatch(c -> c.rule().equals("bridge") || c.severity() == Severity.CAUTION), of + ": " + told);
    return bridges.get(0);
  }

  @Test
  void handrail_isABridgeInAllHeights() {
    for (double up : new double[] {-0.1, -0.05, -0.01, -0.001, -6e-5, 0, 6e-5, 0.001, 0.01, 0.05}) {
      for (double turn : new double[] {0, 37.3}) {
        assertEquals(11.15, bridge(rail(15, 20 + up).turn(Axis.Z, turn), "up " + up + " turned " + turn).measured(), 0.2);
        Concern hopeless = bridge(rail(30, 20 + up).turn(Axis.Z, turn), "up " + up + " turned " + turn);
        assertEquals(26.15, hopeless.measured(), 0.2);
        assertEquals(Severity.ERROR, hopeless.severity());
      }
    }
  }
}
