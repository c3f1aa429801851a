package outrigger.generator.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.param.InputException;
import outrigger.generator.plan.Plan;
import outrigger.presets.Shelf;

class WorkshopTest {
  @TempDir
  Path folder;

  /** The example in the comment of {@link Workshop}. */
  @Test
  void example_makesAndWrites() throws IOException {
    Workshop workshop = new Workshop();
    Plan plan = Workshop.one("bumper-spacer", "front", Shelf.standard(), Map.of("thickness", "0.25in"));
    Batch batch = workshop.make(plan);
    assertEquals(List.of(folder.resolve("front.stl")), workshop.write(batch, folder));
    assertEquals(6.35, batch.parts().get(0).part().stated().get("thickness"), 1e-9);
    assertEquals(batch.parts().get(0).size(), Files.size(folder.resolve("front.stl")));
  }

  @Test
  void one_unknownKind_isRefused() {
    assertEquals("there is no kind \"bumper-spacr\". Did you mean bumper-spacer?",
        assertThrows(InputException.class, () -> Workshop.one("bumper-spacr", "a", Shelf.standard(), Map.of()))
            .getMessage());
  }

  @Test
  void make_unknownPreset_isRefused() {
    Plan plan = Workshop.one("bumper-spacer", "a", Shelf.standard(), Map.of("screw", "M33"));
    assertThrows(InputException.class, () -> new Workshop().make(plan));
  }
}
