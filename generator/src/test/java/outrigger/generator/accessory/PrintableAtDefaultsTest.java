package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outrigger.generator.run.Made;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Printability;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Every part at its defaults, in its stated pose, gives a careful maker nothing to worry about. */
class PrintableAtDefaultsTest {
  @TestFactory
  List<DynamicTest> atItsDefault_raisesNoConcern() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      for (Made made : new Workshop(1, Progress.NONE)
          .make(Workshop.one(accessory.kind(), accessory.kind(), Shelf.standard(), Map.of())).parts()) {
        tests.add(DynamicTest.dynamicTest(made.name(), () -> {
          assertEquals(List.of(), made.report().concerns());
        }));
      }
    }
    return tests;
  }

  private static final Made MOUNT = new Workshop(1, Progress.NONE)
      .make(Workshop.one("body-mount", "mount", Shelf.standard(), Map.of())).parts().get(0);

  private static List<Concern> concerns(Solid solid) {
    return Printability.examine(new Specimen(Proof.judge(Mesher.mesh(solid)).proven().orElseThrow(),
        PrintLimits.standard(), Map.of(), Workers.of(1))).concerns();
  }

  /** The post without what carries it: its whole underside hangs, at the height where the gusset ended. */
  @Test
  void gussetRemoved_isFoundUnderThePost() {
    double flange = MOUNT.part().stated().get("flange-thickness");
    double under = MOUNT.part().stated().get("flange-height") - 3;
    Solid gusset = Prism.of(Profile.rectangle(80, 80).move(0, flange + 40), -1, under);
    Concern worst = concerns(MOUNT.part().solid().cut(gusset)).stream()
        .filter(concern -> concern.rule().equals("ledge")).findFirst().orElseThrow();
    assertEquals(Severity.ERROR, worst.severity());
    assertEquals(under, worst.z(), 0.3);
    assertTrue(worst.y() > flange && worst.measured() > 5, worst.toString());
  }

  /** On its head, the post carries what was the gusset; the flange's edge and the screw holes' points hang. */
  @Test
  void mountUpsideDown_isFound() {
    List<Concern> concerns = concerns(MOUNT.part().solid().turn(Axis.X, 180));
    assertEquals(Severity.ERROR, concerns.get(0).severity(), concerns.toString());
  }
}
