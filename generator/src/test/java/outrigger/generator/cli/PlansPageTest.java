package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** Runs the plan that {@code docs/plans.md} shows. */
class PlansPageTest {
  @TempDir
  Path folder;

  @Test
  void example_makesTheFilesThePageNames() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "plans.md"));
    Path plan = Files.writeString(folder.resolve("p.toml"), page.split("```toml\n")[1].split("```")[0]);
    Path out = folder.resolve("out");
    Run run = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", out.toString());
    assertEquals("", run.err());
    assertEquals(List.of("bumper-1.5.stl", "bumper-2.5.stl", "bumper-2.stl", "cab-front-side-left.stl",
        "cab-front-side-right.stl", "hardware.csv", "manifest.json", "tray-rail-spacing-36.4-length-100.stl",
        "tray-rail-spacing-36.4-length-90.stl", "tray-rail-spacing-40-length-100.stl",
        "tray-rail-spacing-40-length-90.stl"), BadOptionsTest.list(out));
  }
}
