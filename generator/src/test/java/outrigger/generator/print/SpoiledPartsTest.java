package outrigger.generator.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.Accessory;
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

/** Our own parts print without any concern at their defaults; each spoiled on purpose is found where it was spoiled. */
class SpoiledPartsTest {
  private static final double PLAY = 0.011;

  private static Made made(String kind) {
    return new Workshop(1, Progress.NONE).make(Workshop.one(kind, kind, Shelf.standard(), Map.of())).parts().get(0);
  }

  private static List<Concern> concerns(Solid solid) {
    return Printability.examine(new Specimen(Proof.judge(Mesher.mesh(solid)).proven().orElseThrow(),
        PrintLimits.standard(), Map.of(), Workers.of(1))).concerns();
  }

  private static Solid box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return Prism.of(Profile.rectangle(x1 - x0, y1 - y0), z0, z1).move((x0 + x1) / 2, (y0 + y1) / 2, 0);
  }

  private static List<Concern> ofRule(List<Concern> all, String rule) {
    return all.stream().filter(c -> c.rule().equals(rule)).toList();
  }

  @TestFactory
  List<DynamicTest> atItsDefault_hasNoConcern() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      tests.add(DynamicTest.dynamicTest(accessory.kind(), () ->
          assertEquals(List.of(), made(accessory.kind()).report().concerns())));
    }
    return tests;
  }

  /** What stands between engraved strokes is thinner than a wall, and carries nothing. */
  @Test
  void mount_withItsHeightAndPoleEngraved_hasNoThinPlace() {
    for (String pole : List.of("n", "s")) {
      for (String height : List.of("19.96", "21.6", "23.17", "23.47", "24", "24.496", "26.2", "26.318")) {
        Made mount = new Workshop(1, Progress.NONE).make(Workshop.one("body-mount", "mount", Shelf.standard(),
            Map.of("pole", pole, "height", height))).parts().get(0);
        List<Concern> thin = mount.report().concerns().stream().filter(c -> c.rule().startsWith("thin-")).toList();
        assertEquals(List.of(), thin, pole + " " + height);
      }
    }
  }

  @Test
  void pad_withItsPocketSunkTo03_isFoundInThePocketsFloor() {
    Made pad = made("body-pad");
    Solid deeper = Prism.of(Profile.hole(5, 0.01), 0.3, 2);
    List<Concern> found = ofRule(concerns(pad.part().solid().cut(deeper)), "thin-wall");
    assertEquals(1, found.size(), found.toString());
    Concern c = found.get(0);
    assertEquals(Severity.ERROR, c.severity());
    assertEquals(0.3, c.measured(), PLAY);
    assertEquals(0.15, c.z(), PLAY);
    assertTrue(Math.hypot(c.x(), c.y()) < 2.5, c.toString());
    // a disc of 5 mm, seen from above and from below, and what of the underside leans on its rim
    assertEquals(2 * StrictMath.PI * 2.5 * 2.5, c.area(), 0.2 * c.area());
  }

  @Test
  void tray_withItsFloorScrapedTo03_isFoundInTheFloor() {
    Made tray = made("electronics-tray");
    Solid scraped = tray.part().solid().cut(box(-6, 6, -6, 6, 0.3, 3));
    List<Concern> found = concerns(scraped).stream().filter(c -> c.rule().startsWith("thin-")).toList();
    assertFalse(found.isEmpty());
    for (Concern c : found) {
      assertEquals(Severity.ERROR, c.severity(), c.toString());
      assertEquals(0.3, c.measured(), PLAY);
      assertEquals(0.15, c.z(), PLAY);
      assertTrue(Math.abs(c.x()) < 6 && Math.abs(c.y()) < 6, c.toString());
    }
  }

  @Test
  void spacer_withAHoleWidened_isFoundBesideTheHole() {
    Made spacer = made("bumper-spacer");
    double width = spacer.part().stated().get("width");
    double x = spacer.part().stated().get("pitch") / 2;
    Solid widened = spacer.part().solid().cut(Prism.of(Profile.hole(width - 1, 0.002), -1, 9).move(x, 0, 0));
    List<Concern> found = ofRule(concerns(widened), "thin-wall");
    // two side walls and the end wall
    assertEquals(3, found.size(), found.toString());
    for (Concern c : found) {
      assertEquals(Severity.CAUTION, c.severity());
      assertEquals(0.5, c.measured(), PLAY);
      assertEquals(width / 2 - 0.25, Math.hypot(c.x() - x, c.y()), 0.02, c.toString());
    }
  }

  @Test
  void bodyMount_withItsPostHollowed_isFoundInThePost() {
    Made mount = made("body-mount");
    double height = mount.part().stated().get("total-height");
    double size = mount.part().stated().get("post-size");
    // a window across the post leaves 0.4 mm of its outer side
    double out = mount.measures().maxY();
    Solid window = box(-size, size, out - 3, out - 0.4, height - 14, height - 8);
    List<Concern> found = ofRule(concerns(mount.part().solid().cut(window)), "thin-wall").stream()
        .filter(c -> Math.abs(c.measured() - 0.4) < PLAY && Math.abs(c.y() - out + 0.2) < PLAY).toList();
    assertFalse(found.isEmpty());
    for (Concern c : found) {
      assertEquals(Severity.ERROR, c.severity());
      assertEquals(height - 11, c.z(), 3, c.toString());
      assertTrue(Math.abs(c.x()) < size / 2, c.toString());
    }
  }

  @Test
  void spacer_withAThinRib_isFoundOnTop() {
    Made spacer = made("bumper-spacer");
    double top = spacer.part().stated().get("thickness");
    Solid ribbed = spacer.part().solid().join(box(-4, 4, 2.85, 3.15, top - 1, top + 1.2));
    List<Concern> found = concerns(ribbed).stream().filter(c -> c.rule().startsWith("thin-")).toList();
    assertEquals(1, found.size(), found.toString());
    Concern c = found.get(0);
    assertEquals("thin-rib", c.rule());
    assertEquals(Severity.ERROR, c.severity());
    assertEquals(0.3, c.measured(), PLAY);
    assertEquals(3, c.y(), PLAY);
    assertEquals(top + 0.6, c.z(), 0.7);
  }

  @TestFactory
  List<DynamicTest> lyingOnItsFace_isFoundToHang() {
    List<DynamicTest> tests = new ArrayList<>();
    for (String kind : List.of("body-mount", "electronics-tray")) {
      tests.add(DynamicTest.dynamicTest(kind, () -> {
        List<Concern> found = concerns(made(kind).part().solid().turn(Axis.X, 180));
        assertTrue(found.stream().anyMatch(c -> c.severity() == Severity.ERROR), kind + " " + found);
      }));
    }
    return tests;
  }
}
