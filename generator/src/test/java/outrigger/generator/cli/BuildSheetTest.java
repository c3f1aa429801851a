package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** How the working of a truck reads. */
class BuildSheetTest {
  @TempDir
  Path folder;

  @Test
  void wrapped_longLine_keepsWordsAndWidth() {
    String line = "  " + "word ".repeat(60).strip();
    List<String> lines = BuildSheet.wrapped(line);
    assertTrue(lines.size() > 1 && lines.stream().allMatch(one -> one.length() <= 110), lines.toString());
    assertEquals(line.strip(), String.join(" ", lines.stream().map(String::strip).toList()));
    String unbroken = "x".repeat(200);
    assertEquals(List.of(unbroken), BuildSheet.wrapped(unbroken));
  }

  /** Cautions stand at the end, and each once. */
  @Test
  void batch_truck_tellsCautionsOnceAtTheEnd() throws IOException {
    Path plan = Files.writeString(folder.resolve("t.toml"), """
        [[mount]]
        name = "front"
        x = 10
        [[mount]]
        name = "rear"
        x = -50
        [[part]]
        kind = "body-mount"
        """);
    Run run = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    List<String> lines = Arrays.asList(run.out().split("\n"));
    List<Integer> sections = List.of("Heights", "Hold", "Poles", "Clashes and tools", "Weight and strength", "Mind").stream()
        .map(lines::indexOf).toList();
    assertEquals(sections.stream().sorted().toList(), sections);
    assertTrue(sections.get(0) > 0);
    for (String word : new String[] {"Swallowed", "Safety factors are estimates", "estimate, so try"}) {
      List<String> told = lines.stream().filter(line -> line.contains(word)).toList();
      assertEquals(1, told.size(), word);
      assertTrue(lines.indexOf(told.get(0)) > sections.get(5));
    }
  }
}
