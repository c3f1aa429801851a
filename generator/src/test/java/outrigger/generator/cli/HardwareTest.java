package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

class HardwareTest {
  private static final String MOUNT = """
      [[part]]
      kind = "body-mount"
      name = "cab"
      rail = "plate-32"
      flange-thickness = %s
      """;

  @TempDir
  Path folder;

  private Run run(String plan, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("trial.toml"), plan);
    String[] args = new String[more.length + 2];
    args[0] = "hardware";
    args[1] = file.toString();
    System.arraycopy(more, 0, args, 2, more.length);
    return Run.of(Accessories.kinds(), args);
  }

  /** By hand: 4 + 2 of rail, nut 2.4 (ISO 4032), pitch 0.5 (ISO 262): 8.9; two diameters behind the nut: 14.4. */
  @Test
  void hardware_mount_tellsListAndWorking() throws IOException {
    Run run = run(MOUNT.formatted("4"));
    assertEquals("", run.err());
    assertEquals("""
        article            count  spares  on hand  to buy
        M3-socket x 10         2       1        0       3
        M3 nut (ISO 4032)      2       1        0       3
        6x2 magnet             1       1        0       2

        M3-socket x 10:
          2 for cab, flange to rail
        M3 nut (ISO 4032):
          2 for cab, flange to rail
        6x2 magnet:
          1 for cab

        cab, flange to rail: 2 x M3-socket x 10
          flange 4 + web 2 = 6 mm, then 2.4 mm of nut: 8.9 to 14.4 mm will do
          2.4 mm in the thread, end up to 1.6 mm out behind it, head 3 mm above the face

        One length of M3-socket suits all its joints.
        """, run.out());
  }

  @Test
  void hardware_csv_isOneLineAnArticle() throws IOException {
    assertEquals("""
        kind,article,count,spares,on hand,to buy,for
        screw,M3-socket x 10,2,1,0,3,"2 for cab, flange to rail"
        nut,M3 nut (ISO 4032),2,1,0,3,"2 for cab, flange to rail"
        magnet,6x2 magnet,1,1,0,2,1 for cab
        """, run(MOUNT.formatted("4"), "--csv").out());
  }

  @Test
  void hardware_json_carriesTheWorking() throws IOException {
    String json = run(MOUNT.formatted("4"), "--json").out();
    for (String line : List.of("\"article\" : \"M3-socket x 10\"", "\"to-buy\" : 3", "\"shortest\" : 8.9",
        "\"longest\" : 14.4", "\"engagement\" : 2.4", "\"protrusion\" : 1.6", "\"head-above\" : 3")) {
      assertTrue(json.contains(line), line + " in " + json);
    }
  }

  /** 10 and 12 both do: what is in the drawer is taken, and what it lacks is to buy. */
  @Test
  void hardware_onHand_isPreferredAndCounted() throws IOException {
    String csv = run("[on-hand]\nhardware = [\"M3-socket x 12:2\", \"M3 nut:50\", \"6x2 magnet:1\"]\n"
        + MOUNT.formatted("4"), "--csv").out();
    assertTrue(csv.contains("screw,M3-socket x 12,2,1,2,1,"), csv);
    assertTrue(csv.contains("nut,M3 nut (ISO 4032),2,1,50,0,"), csv);
    assertTrue(csv.contains("magnet,6x2 magnet,1,1,1,1,"), csv);
  }

  @Test
  void hardware_badOnHand_tellsEveryFaultWithItsPlace() throws IOException {
    Run run = run("[on-hand]\nhardware = [\"M3-sockt x 9:2\", \"M3 nut\"]\nscrews = 3\n" + MOUNT.formatted("4"));
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertTrue(run.err().contains("on-hand: hardware is \"M3-sockt x 9:2\" (trial.toml, line 2, column 1), and there is no "
        + "screw M3-sockt. Did you mean"), run.err());
    assertTrue(run.err().contains("which says no count from 1 to 9999 behind a colon"), run.err());
    assertTrue(run.err().contains("screws"), run.err());
  }

  /** A station on both rails: a disc in each mount and one over each in the body; steel takes the place of the latter. */
  @Test
  void hardware_truck_countsWhatTheBodyCarries() throws IOException {
    String truck = "[body]\nmass = 60\n[on-hand]\nhardware = [\"8x3 magnet:8\"]\n[[mount]]\nname = \"a\"\nx = -40\n%s"
        + "[[mount]]\nname = \"b\"\nx = 10\n%s[[part]]\nkind = \"body-mount\"\n";
    String pairs = run(truck.formatted("magnet = \"8x3\"\n", "magnet = \"8x3\"\n"), "--csv").out();
    assertTrue(pairs.contains("magnet,8x3 magnet,8,1,8,1,"), pairs);
    assertTrue(pairs.contains("1 for the body over a-left"), pairs);
    String steel = "magnet = \"8x3\"\nfacing = \"steel\"\nsteel = 3\nsteel-width = 16\n";
    String discs = run(truck.formatted(steel, steel), "--csv").out();
    assertTrue(discs.contains("magnet,8x3 magnet,4,1,8,0,"), discs);
    assertTrue(discs.contains("other,steel 16 x 3 mm,4,1,0,5,"), discs);
  }

  @Test
  void hardware_noScrewLongEnough_saysTheNearestThatWorksAndExits2() throws IOException {
    String plan = "[[part]]\nkind = \"bumper-spacer\"\nname = \"thick\"\nthickness = 30\n";
    Run run = run(plan);
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("", run.out());
    assertEquals("thick: spacer to bumper and mount: M3-socket must be 36.9 to 42.4 mm long (spacer 30 + bumper and "
        + "mount 4, then the nut), but it comes in 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 30 (part at "
        + "trial.toml, line 3, column 1). With 30 mm, what is clamped must be 6.9 mm thinner.\n", run.err());
    Path out = folder.resolve("out");
    Run batch = Run.of(Accessories.kinds(), "batch", folder.resolve("trial.toml").toString(), "--out", out.toString());
    assertEquals(Exit.BAD_INPUT, batch.exit());
    assertTrue(Files.notExists(out));
  }
}
