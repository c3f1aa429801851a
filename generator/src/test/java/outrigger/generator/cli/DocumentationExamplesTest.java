package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.plan.Plan;
import outrigger.generator.run.Workshop;
import outrigger.presets.Shelf;

/** Every command and plan that the README shows, as it stands there. */
class DocumentationExamplesTest {
  private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
  private static final String COMMAND = "generator/bin/outrigger ";

  @TempDir
  private static Path folder;

  @TestFactory
  Stream<DynamicTest> readme_everyMakeAndBatchCommand_writesSoundFiles() throws IOException {
    List<String> commands = Files.readAllLines(ROOT.resolve("README.md")).stream()
        .filter(line -> line.startsWith(COMMAND + "make") || line.startsWith(COMMAND + "batch")).toList();
    assertTrue(commands.size() >= 4, "only " + commands.size() + " commands found");
    return commands.stream().map(line -> DynamicTest.dynamicTest(line, () -> runs(line)));
  }

  private static void runs(String line) {
    List<String> args = new ArrayList<>(List.of(line.substring(COMMAND.length()).split(" ")));
    if (args.get(0).equals("batch")) {
      args.set(1, ROOT.resolve(args.get(1)).toString());
    }
    args.addAll(List.of("--out", folder.resolve("out").toString()));
    Run run = Run.of(Accessories.kinds(), args.toArray(new String[0]));
    assertEquals("", run.err());
    assertEquals(0, run.exit());
  }

  @Test
  void readme_plan_makesOneTrayForEachSpacing() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    String plan = readme.substring(readme.indexOf("```toml") + 8);
    Path file = Files.writeString(folder.resolve("trays.toml"), plan.substring(0, plan.indexOf("```")));
    Path out = folder.resolve("trays");
    Run run = Run.of(Accessories.kinds(), "batch", file.toString(), "--out", out.toString());
    assertEquals(0, run.exit(), run.err());
    for (String spacing : List.of("33", "36.4", "40")) {
      assertTrue(Files.exists(out.resolve("tray-rail-spacing-" + spacing + ".stl")), run.out());
    }
  }

  /** The lines of the section on Java. */
  @Test
  void readme_javaExample_writesTheSpacer() {
    Path out = folder.resolve("java");
    Workshop workshop = new Workshop();
    Plan plan = Workshop.one("bumper-spacer", "front", Shelf.standard(), Map.of("thickness", "0.25in"));
    workshop.write(workshop.make(plan), out);
    assertTrue(Files.exists(out.resolve("front.stl")));
  }
}
