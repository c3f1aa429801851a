package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/**
 * Where a side tray's two screws go through the left rail: by hand, its middle at x -80, tabs 36 apart, so x -62 and -98,
 * 4 below the top.
 */
class RailHolesTest {
  private static final String PLAN = """
      [rail]
      spacing = 32
      front = 20
      length = 200
      %s
      [[part]]
      kind = "electronics-tray"
      name = "side"
      place = "left"
      x = -80
      length = 60
      width = 25
      tab-pitch = 36
      straps = 0
      """;

  @TempDir
  Path folder;

  private String rails(String holes) throws IOException {
    Path plan = Files.writeString(folder.resolve("t.toml"), PLAN.formatted(holes));
    Run run = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    return String.join(" ", run.out().split("\\s+"));
  }

  @Test
  void batch_noHoles_saysWhereToDrill() throws IOException {
    String out = rails("");
    assertTrue(out.contains("side: drill the left rail 3.4 mm wide for M3 at x -98, 4 below its top; at x -62, 4 below its top."),
        out);
    assertTrue(Files.readString(folder.resolve("out").resolve("manifest.json")).contains("\"rail-holes\""));
  }

  @Test
  void batch_rowThatMeets_isTaken() throws IOException {
    String out = rails("[[holes]]\nname = \"row A\"\nx = 10\npitch = 12\ncount = 12\ndrop = 4.1\n");
    assertTrue(out.contains("side: takes hole 10 of row A, hole 7 of row A in the left rail."), out);
  }

  /** 1 mm aside of a hole of 3.4 leaves no web between it and the new one; the other rail's holes do not count. */
  @Test
  void batch_rowBesides_warns() throws IOException {
    String out = rails("[[holes]]\nname = \"row A\"\nx = -61\ncount = 1\ndrop = 4\n");
    assertTrue(out.contains("at x -62, 4 below its top (breaks into hole 1 of row A, 1 mm ahead: move it there)"), out);
    assertTrue(out.contains("at x -98, 4 below its top (nearest: hole 1 of row A, 37 mm ahead)"), out);
    assertTrue(!rails("[[holes]]\nside = \"right\"\nx = -61\ncount = 1\ndrop = 4\n").contains("row, "));
  }
}
