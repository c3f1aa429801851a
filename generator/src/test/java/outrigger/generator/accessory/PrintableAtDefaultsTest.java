package outrigger.generator.accessory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outrigger.generator.run.Made;
import outrigger.generator.run.Progress;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;

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
}
