package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** Items of a plan, its trays and the space between its rails. */
class LayoutPlanTest {
  private static final String PLAN = """
      [between-rails]
      spacing = ["-180:30", "-60:36.4", "40:36.4"]
      clearance = 0.2
      height = 22

      [[item]]
      name = "battery"
      length = %s
      width = 30
      height = 16

      [[item]]
      name = "receiver"
      length = 40
      width = 25
      height = 14
      rooms = ["%s"]

      [[part]]
      kind = "electronics-tray"
      name = "tray"
      length = 70
      tab-pitch = 44
      straps = 0
      """;

  @TempDir
  Path folder;

  private Run batch(String plan, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("trial.toml"), plan);
    String[] args = new String[more.length + 4];
    args[0] = "batch";
    args[1] = file.toString();
    args[2] = "--out";
    args[3] = folder.resolve("out").toString();
    System.arraycopy(more, 0, args, 4, more.length);
    return Run.of(Accessories.kinds(), args);
  }

  private void assertRefused(Run run, String message) {
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals(message, run.err());
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  @Test
  void batch_items_tellsWhereTheyLie() throws IOException {
    Run run = batch(PLAN.formatted("60", "tray"));
    assertEquals("", run.err());
    assertTrue(run.out().contains("battery lies in between-rails lengthwise"), run.out());
    assertTrue(run.out().contains("receiver lies in tray lengthwise, its middle at x 0, y 0 mm"), run.out());
    assertTrue(run.out().contains("battery alone in tray: "), run.out());
    String json = Files.readString(folder.resolve("out").resolve("layout.json"));
    assertTrue(json.contains("\"item\" : \"battery\",\n      \"room\" : \"between-rails\""), json);
    assertTrue(batch(PLAN.formatted("60", "tray"), "--json").out().contains("\"layout\" : {"));
  }

  /** 6.4 less over 120 mm behind x = -60: at 182 from the front 32.027 - 2 x 0.2 are left, and 33 is wanted. */
  @Test
  void batch_itemTooLong_saysByHowMuchOnWhichAxis() throws IOException {
    Run run = batch(PLAN.formatted("180", "tray").replace("width = 30", "width = 31"));
    assertRefused(run, "layout: battery finds no place: tray is too small even when empty, it is 114.8 mm too long and "
        + "3.4 mm too wide; between-rails is too small even when empty, it is 1.374 mm too wide (trial.toml, line 6, "
        + "column 1). Make a room larger by that much, let it go elsewhere, or leave it out.\n");
  }

  @Test
  void batch_badItemTables_areAllToldWithTheirPlace() throws IOException {
    assertRefused(batch(PLAN.formatted("60", "trai")), "receiver: there is no tray without items and no space called trai "
        + "(trial.toml, line 12, column 1). Did you mean tray?\n");
    Run run = batch(PLAN.formatted("60", "tray").replace("-60:36.4", "-60;36.4").replace("name = \"battery\"\n", "")
        .replace("spacing =", "clearence = 2\nspacing ="));
    assertEquals(Exit.BAD_INPUT, run.exit());
    for (String part : new String[] {"is no X:WIDTH", "an item has no name", "Did you mean clearance?",
        "3 faults; nothing was written."}) {
      assertTrue(run.err().contains(part), run.err());
    }
  }

  @Test
  void batch_stationsThatMakeNoSpace_areRefused() throws IOException {
    assertTrue(batch(PLAN.formatted("60", "tray").replace(", \"-60:36.4\", \"40:36.4\"", "")).err()
        .contains("one station makes no space"));
    assertTrue(batch(PLAN.formatted("60", "tray").replace("\"40:36.4", "\"-100:36.4")).err()
        .contains("the stations go back and forth at x -100 mm"));
    assertTrue(batch(PLAN.formatted("60", "tray").replace("clearance = 0.2", "clearance = 15")).err()
        .contains("gaps of 15 mm on both sides leave nothing of the 30 mm"));
  }
}
