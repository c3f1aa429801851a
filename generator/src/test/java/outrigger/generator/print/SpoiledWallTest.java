package outrigger.generator.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Printability;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Our own parts raise no alarm about walls and gaps at their defaults, and each is found once its wall is spoiled. */
class SpoiledWallTest {
  private static final double THIN = 0.4;

  private static List<Made> made(String kind) {
    return new Workshop(1, Progress.NONE).make(Workshop.one(kind, kind, Shelf.standard(), Map.of())).parts();
  }

  private static List<Concern> widths(Solid solid) {
    Specimen specimen = new Specimen(Proof.judge(Mesher.mesh(solid)).proven().orElseThrow(), PrintLimits.standard(),
        Map.of(), Workers.of(1));
    return Printability.examine(specimen).concerns().stream()
        .filter(c -> c.rule().startsWith("thin-") || c.rule().startsWith("narrow-") || c.rule().equals("small-hole"))
        .toList();
  }

  private static Solid box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return Prism.of(Profile.rectangle(x1 - x0, y1 - y0), z0, z1).move((x0 + x1) / 2, (y0 + y1) / 2, 0);
  }

  @TestFactory
  List<DynamicTest> atItsDefault_raisesNoAlarm() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      tests.add(DynamicTest.dynamicTest(accessory.kind(), () -> {
        for (Made part : made(accessory.kind())) {
          assertEquals(List.of(), widths(part.part().solid()), part.name());
        }
      }));
    }
    return tests;
  }

  /** A fin of 0.4 mm that sticks out of the part at half its height. */
  @TestFactory
  List<DynamicTest> withAThinFin_isFoundThere() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Accessory<?> accessory : Accessories.all()) {
      tests.add(DynamicTest.dynamicTest(accessory.kind(), () -> {
        for (Made part : made(accessory.kind())) {
          Measures m = part.measures();
          double y = (m.minY() + m.maxY()) / 2 + 1;
          Solid fin = box(m.minX() - 8, m.maxX() + 8, y - THIN / 2, y + THIN / 2, 0, 4);
          List<Concern> found = widths(part.part().solid().join(fin)).stream()
              .filter(c -> c.rule().equals("thin-wall")).toList();
          assertTrue(found.size() >= 1, part.name() + " " + found);
          for (Concern c : found) {
            assertEquals(THIN, c.measured(), 0.01, c.toString());
            assertEquals(Severity.ERROR, c.severity());
            assertEquals(y, c.y(), 0.01, c.toString());
          }
        }
      }));
    }
    return tests;
  }

  @Test
  void tray_withOneWallCutDown_isFoundInThatWall() {
    Made tray = made("electronics-tray").get(0);
    double wall = (tray.part().stated().get("length") - tray.part().stated().get("inside-length")) / 2;
    double outside = tray.measures().maxX();
    Solid spoiled = tray.part().solid().cut(box(outside - wall + THIN, outside + 1, -5, 5, 2.5, 7));
    List<Concern> found = widths(spoiled);
    assertEquals(1, found.size(), found.toString());
    Concern c = found.get(0);
    assertEquals("thin-wall", c.rule());
    assertEquals(Severity.ERROR, c.severity());
    assertEquals(THIN, c.measured(), 0.01);
    assertEquals(outside - wall + THIN / 2, c.x(), 0.01);
    assertEquals(0, c.y(), 5);
    assertEquals(4.75, c.z(), 2.25);
  }
}
