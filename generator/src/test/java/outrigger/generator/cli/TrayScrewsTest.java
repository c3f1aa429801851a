package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.tray.Tray;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.joint.Joint;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;

/** Screws that stand inward out of a tray's tabs, and what lies on it. */
class TrayScrewsTest {
  private static final Shelf SHELF = Shelf.standard();

  @TempDir
  Path folder;

  private static Part tray(String items) {
    return new Tray().build(ParamValues.record(TrayParams.class, SHELF, "straps", "0", "items", items), SHELF).get(0);
  }

  /**
   * By hand: web 2, gap 0 to 0.4, tab 3.2 of which the insert takes 3: M3 x 6 reaches 6 - 2 - 3.2 = 0.8 in. An item as wide
   * as the clear floor that passes the tabs leaves the screw those 0.8 and no more, one between the tabs does not count.
   */
  @Test
  void build_itemBetweenTabs_shortensTheScrews() {
    Joint free = tray("").fixings().joints().get(0);
    double width = tray("").stated().get("clear-width");
    Joint held = tray("pack:70x" + width + "x8").fixings().joints().get(0);
    Joint between = tray("pack:50x" + width + "x8").fixings().joints().get(0);
    assertEquals(6, held.longest(), 1e-6);
    assertEquals(free.longest(), between.longest(), 1e-9);
    assertTrue(held.takes(6) && !held.takes(8) && free.takes(8));
  }

  /** The drawer's longer screws would run into the battery: the shorter ones are bought. */
  @Test
  void batch_longScrewsOnHand_areNotRunIntoTheItem() throws IOException {
    Path plan = Files.writeString(folder.resolve("t.toml"), """
        [rail]
        spacing = 36.4
        front = 20
        length = 200
        [on-hand]
        hardware = ["M3-socket x 8:20"]
        [[part]]
        kind = "electronics-tray"
        name = "tray"
        x = -80
        straps = 0
        items = ["battery:70x25x8"]
        """);
    Run run = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    String csv = Files.readString(folder.resolve("out").resolve("hardware.csv"));
    assertTrue(csv.contains("M3-socket x 6"), csv);
    assertFalse(csv.contains("M3-socket x 8,"), csv);
  }

  /** What a tray lays out for itself is looked at for clashes as well: here it stands into the body's engine bay. */
  @Test
  void batch_ownItem_isPartOfTheClashCheck() throws IOException {
    Path plan = Files.writeString(folder.resolve("t.toml"), """
        [rail]
        spacing = 36.4
        front = 20
        length = 200
        [[keep-out]]
        name = "engine bay"
        from = [-90, -10, 3]
        to = [-70, 10, 30]
        [[part]]
        kind = "electronics-tray"
        name = "tray"
        x = -80
        straps = 0
        items = ["battery:50x25x18"]
        """);
    Run run = Run.of(Accessories.kinds(), "batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.UNSOUND, run.exit(), run.out());
    assertTrue(run.err().contains("battery in tray") && run.err().contains("engine bay"), run.err());
  }

  @Test
  void items_ownLayout_liesOnTheFloor() {
    TrayParams p = ParamValues.record(TrayParams.class, SHELF, "items", "battery:50x25x8+1");
    assertEquals(List.of(1.2, 9.2), Tray.items(p, SHELF).stream().flatMap(b -> java.util.stream.Stream.of(b.low().z(),
        b.high().z())).map(z -> Math.rint(z * 1e6) / 1e6).toList());
  }
}
