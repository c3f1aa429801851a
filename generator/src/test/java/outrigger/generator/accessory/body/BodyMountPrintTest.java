package outrigger.generator.accessory.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.accessory.Part;
import outrigger.generator.measure.MeshGauge;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;

/** Every way a body mount can be had is sound, in one piece, and prints without support. */
class BodyMountPrintTest {
  private static final double LIMIT = 45;
  /** Slopes at the limit lie on the grid, so that they may be this much off, degrees. */
  private static final double GRID_DEGREES = 0.02;
  /** The engraved lines have ceilings; they are ledges as deep as the engraving and stand free; common practice. */
  private static final double LEDGE = 0.4;

  @ParameterizedTest
  @ValueSource(strings = {"height=24", "gusset-angle=45", "gusset-angle=0", "gusset-angle=45 reach=7", "pocket=slip",
      "pocket=slip stack=2 magnets=2", "magnet=3x1", "magnet=12x3 rail=plate-36", "screws=3", "screws=4 magnets=2",
      "post-place=front", "post-place=rear side=right", "fit=insert flange-thickness=6",
      "fit=nut flange-thickness=5", "fit=pilot flange-thickness=6", "head-seat=counterbore flange-thickness=6",
      "screw=M3-countersunk head-seat=countersink", "rail=channel-34 mounting=inboard reach=12 screw=M2-socket",
      "rail=box-36 mounting=inboard", "reach=4.5", "reach=30", "height=3 pole=none label=no", "height=6",
      "height=100", "printer=demo-0.6 magnet=8x2", "printer=demo-0.25 screw=M2-socket", "label=no pole=s",
      "lead-in=0", "lead-in=0 pocket=slip", "flange-length=60 flange-thickness=3"})
  void build_anyVariant_isSoundAndNeedsNoSupport(String given) {
    Part part = BodyMountTest.part(given.split(" "));
    Mesh mesh = BodyMountTest.mesh(part);
    Proof.Verdict verdict = Proof.judge(mesh);
    assertTrue(verdict.proven().isPresent(), () -> given + ": " + verdict.findings());
    Measures m = verdict.measures();
    assertEquals(1, m.pieces(), given);
    assertEquals(1, m.shells(), given);
    // One handle a through hole: the screws' and the push-out holes, each running out of the part.
    long screws = Math.round(Double.parseDouble(part.hardware().get(0).split(" ")[0]));
    assertEquals(screws + (given.contains("magnets=2") ? 2 : 1), m.genus(), given);
    MeshGauge gauge = MeshGauge.of(mesh);
    double face = gauge.max(Axis.Y);
    List<MeshGauge.Overhang> overhangs = gauge.overhangs(LIMIT + GRID_DEGREES).stream()
        .filter(o -> o.y() < face - LEDGE).toList();
    assertEquals(List.of(), overhangs, given);
    assertEquals(0, gauge.min(Axis.Z), given);
  }

  @Test
  void build_gusset_leansAsAsked() {
    MeshGauge gauge = BodyMountTest.gauge("gusset-angle=40", "pole=none", "label=no", "post-size=9");
    // On the bed the slope stands back from the post's face by the tangent of its lean over the flange's height.
    List<Double> low = gauge.crossings(Axis.Y, 3.3, 1.7);
    assertEquals(14.5 - (11 - 1.7) * Math.tan(Math.toRadians(40)), low.get(low.size() - 1), 1e-3);
    assertEquals(0, gauge.overhangs(40.02).stream().filter(o -> o.y() > 4).count());
  }

  @Test
  void balance_default_standsOnItsFoot() {
    Measures m = BodyMountTest.measures("");
    assertTrue(m.centroidY() < 14.5 - 11 * Math.tan(Math.PI / 6), "weight at " + m.centroidY());
    Balance balance = Balance.of(BodyMountLayout.of(BodyMountRefusalTest.params(), outrigger.presets.Shelf.standard()));
    // Holes are left out of the estimate.
    assertEquals(m.centroidY(), balance.weight(), 0.1);
    assertTrue(balance.stands());
  }

  @Test
  void notes_steepGusset_askForABrim() {
    assertTrue(BodyMountTest.part("gusset-angle=45").notes().stream().anyMatch(n -> n.contains("brim")));
    assertTrue(BodyMountTest.part("").notes().stream().noneMatch(n -> n.contains("brim")));
  }
}
