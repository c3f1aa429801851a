package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.generator.measure.Proven;
import outrigger.generator.run.Made;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Printability;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Parts spoiled on purpose: what was done to them is found, where it was done. */
class SpoiledPartsTest {
  private static Made made(String kind) {
    return new Workshop(1, Progress.NONE).make(Workshop.one(kind, kind, Shelf.standard(), Map.of())).parts().get(0);
  }

  private static PrintReport report(Solid solid) {
    CheckedMesh mesh = Proven.mesh(solid);
    return Printability.examine(new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1)));
  }

  private static void assertFound(PrintReport report, double[] least, double[] most, String... rules) {
    List<Concern> there = report.concerns().stream().filter(c -> List.of(rules).contains(c.rule())
        && c.x() >= least[0] && c.x() <= most[0] && c.y() >= least[1] && c.y() <= most[1]
        && c.z() >= least[2] && c.z() <= most[2]).toList();
    assertTrue(!there.isEmpty(), () -> report.concerns().toString());
  }

  /** The head lies on the bed, and the flange, whose lower edge was the foot, stands out in the air. */
  @Test
  void bodyMount_upsideDown_flangeIsFoundInTheAir() {
    Made mount = made("body-mount");
    Measures m = mount.measures();
    double height = m.maxZ() - m.minZ();
    PrintReport report = report(mount.part().solid().turn(Axis.X, 180));
    assertFound(report, new double[] {m.minX(), -m.maxY(), -height * 0.4}, new double[] {m.maxX(), -m.minY(), 0},
        "island", "overhang", "ledge", "bridge");
  }

  /** Everything below the post but the flange and a foot of it cut away: the post begins in the air. */
  @Test
  void bodyMount_gussetRemoved_postIsFoundStandingOut() {
    Made mount = made("body-mount");
    Measures m = mount.measures();
    double flangeTo = m.minY() + mount.part().stated().get("flange-thickness");
    Solid cut = Prism.of(Profile.rectangle(100, 100).move(0, flangeTo + 50), -1, 10);
    PrintReport report = report(mount.part().solid().cut(cut));
    assertFound(report, new double[] {m.minX(), flangeTo - 1, 9}, new double[] {m.maxX(), m.maxY(), 11}, "overhang",
        "ledge", "island");
  }

  /** A tray whose left wall is shaved to 0.4 mm. */
  @Test
  void tray_wallOfFourTenths_isFoundInThatWall() {
    Made tray = made("electronics-tray");
    Measures m = tray.measures();
    double length = m.maxX() - m.minX();
    Solid shave = Prism.of(Profile.rectangle(length / 3, 20).move(0, m.maxY() - 0.4 - 10), 2, 20);
    PrintReport report = report(tray.part().solid().cut(shave));
    assertFound(report, new double[] {-length / 6 - 1, m.maxY() - 1, 1.5}, new double[] {length / 6 + 1, m.maxY(), 9},
        "thin-wall");
  }

  @Test
  void parts_asTheyAre_standInTheBestPose() {
    for (Accessory<?> accessory : Accessories.all()) {
      double better = made(accessory.kind()).report().facts().stream().filter(f -> f.name().equals("better-poses"))
          .findFirst().orElseThrow().value();
      assertEquals(0, better, accessory.kind());
    }
  }
}
