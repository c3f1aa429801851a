package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

class NewPlanTest {
  @TempDir
  Path folder;

  @Test
  void planNew_flagsInInches_makesAPlanThatStands() throws IOException {
    Path plan = folder.resolve("mine.toml");
    Run written = Run.of(Accessories.kinds(), "plan", "new", "--file", plan.toString(), "--spacing", "1.3in", "--form", "channel",
        "--flange", "5", "--front-floor", "26");
    assertEquals("", written.err());
    assertTrue(Files.readString(plan).contains("spacing = 33.02\n"));
    Run made = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals("", made.err());
    assertEquals(0, made.exit());
    assertTrue(Files.exists(folder.resolve("out").resolve("cab-front-left.stl")));
    assertTrue(Files.readString(folder.resolve("out").resolve("manifest.json")).contains("\"pole-up\" : \"N\""));
  }

  @Test
  void planNew_fileThere_leavesIt() throws IOException {
    Path plan = Files.writeString(folder.resolve("mine.toml"), "mine");
    Run run = Run.of(Accessories.kinds(), "plan", "new", "--file", plan.toString());
    assertEquals(2, run.exit());
    assertEquals("mine", Files.readString(plan));
  }

  @Test
  void planNew_mountsOffTheRails_writesNothing() {
    Run run = Run.of(Accessories.kinds(), "plan", "new", "--file", folder.resolve("x.toml").toString(), "--rear-x", "-400");
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("do not stand on rails"), run.err());
    assertTrue(Files.notExists(folder.resolve("x.toml")));
  }
}
