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
      [rail]
      spacing = 36.4
      front = 40
      length = 220
      [[rail-at]]
      x = -60
      spacing = 36.4
      [[rail-at]]
      x = -180
      spacing = 30

      [between-rails]
      front = 40
      rear = -180
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
      width = 23
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
    Run run = batch(PLAN.formatted("60", "tray"), "--write-anyway");
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(run.out().contains("battery lies in between-rails lengthwise"), run.out());
    assertTrue(run.out().contains("receiver lies in tray lengthwise, its middle at x 0, y 0 mm"), run.out());
    assertTrue(run.out().contains("battery alone in tray: "), run.out());
    String json = Files.readString(folder.resolve("out").resolve("manifest.json"));
    assertTrue(json.contains("\"item\" : \"battery\",\n        \"room\" : \"between-rails\""), json);
    assertTrue(batch(PLAN.formatted("60", "tray"), "--json").out().contains("\"layout\" : {"));
  }

  /** The tray's screw heads stand in the rail where it tapers away from the web the tray was drawn for. */
  @Test
  void batch_clash_writesNothingAndExitsThree() throws IOException {
    Run run = batch(PLAN.formatted("60", "tray"));
    assertEquals(Exit.UNSOUND, run.exit());
    assertTrue(run.err().startsWith("Clash: rail left and tray, tab to rail 3 screw head share "), run.err());
    assertTrue(run.err().endsWith("nothing was written. Move or change a part, or give --write-anyway.\n"), run.err());
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  /** The tray's screws leave 33 - 7.4 = 25.6 between their ends, less 2 x 0.2 of clearance, and 33 is wanted. */
  @Test
  void batch_itemTooLong_saysByHowMuchOnWhichAxis() throws IOException {
    Run run = batch(PLAN.formatted("180", "tray").replace("width = 30", "width = 31"));
    assertRefused(run, "item battery: battery takes 182 x 33 x 17 mm with the room round it and finds no place: tray (67.2 "
        + "long, 25.6 wide, 36.8 high) is too small even when empty: 114.8 mm too long and 7.4 mm too wide; between-rails "
        + "(220 long, 25.2 to 36 wide, 22 high) is too small even when empty: 7.8 mm too wide (name: "
        + "trial.toml, line 19, column 1). Make a room larger by that much, let it go elsewhere, or leave it out.\n");
  }

  @Test
  void batch_badItemTables_areAllToldWithTheirPlace() throws IOException {
    assertRefused(batch(PLAN.formatted("60", "trai")), "item receiver: there is no tray without items of its own and no "
        + "space called \"trai\" (rooms: trial.toml, line 29, column 1). Did you mean tray?\n");
    Run run = batch(PLAN.formatted("60", "tray").replace("\"receiver\"", "\"battery\"").replace("height = 22",
        "heigth = 22"));
    assertEquals(Exit.BAD_INPUT, run.exit());
    for (String part : new String[] {"two are called battery", "Did you mean height?", "2 faults; nothing was written."}) {
      assertTrue(run.err().contains(part), run.err());
    }
  }

  @Test
  void batch_spaceThatCannotBe_isRefused() throws IOException {
    String plan = PLAN.formatted("60", "tray");
    assertTrue(batch(plan.replace("rear = -180", "rear = -181")).err().contains("the space runs from -181 mm to 40 mm, but "
        + "the rails from -180 mm to 40 mm"));
    assertTrue(batch(plan.replace("clearance = 0.2", "clearance = 15")).err().contains("leave nothing between them"));
    assertTrue(batch(plan.replace("rear = -180", "rear = 50")).err().contains("is not behind its front end at 40 mm"));
    assertTrue(batch(plan.replace("rooms = [\"tray\"]", "").replace("[between-rails]\nfront = 40\nrear = -180\nclearance = "
        + "0.2\nheight = 22\n", "").replace("straps = 0", "straps = 0\nitems = [\"pack:20x10x5\"]")).err()
        .contains("items have nowhere to go"));
  }

  /** A channel's flanges stand inward: 36.4 - 2 x (5 - 1.5) - 2 x 0.2 = 29 are clear, and 30 + 2 are wanted. */
  @Test
  void batch_channel_countsItsFlanges() throws IOException {
    Run run = batch(PLAN.formatted("60", "tray").replace("[rail]", "[rail]\nform = \"channel\"\nweb = 1.5\nflange = 5"));
    assertTrue(run.err().contains("is too small even when empty: 3 mm too wide"), run.err());
  }

  /** A stack that fights, a magnet that is too weak, a mistyped key, an item and two trays: each is told the first time. */
  @Test
  void batch_faultsOfEveryKind_areToldTogether() throws IOException {
    Run run = batch("""
        [body]
        mass = 900
        [[mount]]
        floor = "25+-0.1"
        post = "21"
        magnet = "6x2"
        stack = 1
        [drive]
        wheels = 3
        [between-rails]
        rear = -100
        [[item]]
        name = "battery"
        length = 200
        rooms = ["between-rails"]
        [[part]]
        kind = "electronics-tray"
        tab-pitch = 200
        [[part]]
        kind = "electronics-tray"
        name = "other"
        straps = 99
        """);
    assertEquals(Exit.BAD_INPUT, run.exit());
    for (String part : new String[] {"its values fight: post 21", "no magnet holds this mount", "no parameter \"wheels\"",
        "finds no place: between-rails (120 long", "the outer tabs end", "straps is 99",
        "6 faults; nothing was written."}) {
      assertTrue(run.err().contains(part), run.err());
    }
  }

  /** A thing that may go anywhere is not said to find no place while a tray is at fault that might take it. */
  @Test
  void batch_trayAtFault_tellsOnlyOfItemsThatCannotGoThere() throws IOException {
    Run run = batch(PLAN.formatted("300", "tray").replace("straps = 0", "straps = 99"));
    assertTrue(run.err().contains("straps is 99"), run.err());
    assertTrue(!run.err().contains("finds no place"), run.err());
  }

  /** A screw no length suits and an item that finds no place have nothing to do with each other. */
  @Test
  void batch_jointAndItem_areToldTogether() throws IOException {
    Run run = batch(PLAN.formatted("180", "tray").replace("width = 30", "width = 31").replace("straps = 0",
        "straps = 0\n[[part]]\nkind = \"bumper-spacer\"\nthickness = 20\nclamped = 60"));
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertTrue(run.err().contains("finds no place: tray") && run.err().contains("must be 8"), run.err());
  }

  /** At 4.4 degrees the box round a long battery in a turned mount's axes reaches its screws, the battery does not. */
  @Test
  void hardware_mountTurnedToAnItem_findsItsScrew() throws IOException {
    Path file = Files.writeString(folder.resolve("turned.toml"), """
        [rail]
        form = "channel"
        spacing = 32.24
        web = 1.6
        flange = 5
        height = 12
        front = 30
        length = 280
        [[rail-at]]
        x = -20
        spacing = 40
        [[rail-at]]
        x = -120
        spacing = 32
        [[mount]]
        name = "nose"
        x = 4
        [[mount]]
        name = "mid"
        x = -66
        [between-rails]
        front = 10
        rear = -200
        level = -12
        height = 30
        [[item]]
        name = "battery"
        length = 55
        width = 20
        height = 15
        cable-side = "rear"
        cable-room = 10
        [[part]]
        kind = "body-mount"
        """);
    Run run = Run.of(Accessories.kinds(), "hardware", file.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(run.out().contains("M3-socket x 10"), run.out());
  }
}
