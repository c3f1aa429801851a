package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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

  /** Answers, nonsense among them, then the end of input: what was said counts, the rest are defaults. */
  @Test
  void planNew_ask_asksAgainAfterNonsense() throws IOException {
    Path plan = folder.resolve("asked.toml");
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream("My tipper\n\nabc\nbox\n36\nx\n1.5mm\n".getBytes(StandardCharsets.UTF_8)));
      Run run = Run.of(Accessories.kinds(), "plan", "new", "--ask", "--file", plan.toString());
      assertEquals(0, run.exit(), run.err());
      assertTrue(run.err().contains("form is \"abc\""), run.err());
      assertTrue(run.err().contains("web is \"x\""), run.err());
    } finally {
      System.setIn(before);
    }
    String text = Files.readString(plan);
    assertTrue(text.contains("My tipper") && text.contains("form = \"box\"") && text.contains("spacing = 36\n")
        && text.contains("web = 1.5\n"), text);
  }
}
