package outrigger.generator.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.param.Fault;
import outrigger.generator.plan.Plan;
import outrigger.generator.plan.PlanReader;

/** Trucks solved from plans: moments by hand, chains summed again, poles turned about, and what is refused. */
class SolverTest {
  private static final String FOUR = """
      [rail]
      spacing = 32
      front = 25
      length = 200
      [body]
      mass = 200
      shock = 5
      cg = [-30, 0, 26]
      [[mount]]
      name = "front"
      x = 10
      floor = 26
      %s
      [[mount]]
      name = "rear"
      x = -50
      floor = 26
      [[part]]
      kind = "body-mount"
      """;

  @TempDir
  Path folder;

  private Plan read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("t.toml"), text);
    return new PlanReader(Accessories.kinds(), Optional.empty(), Map.of()).read(file);
  }

  private TruckFit fit(String text) throws IOException {
    Plan plan = read(text);
    assertEquals(List.of(), plan.faults().stream().map(Fault::message).toList());
    return plan.fit().orElseThrow();
  }

  private String refusal(String text) throws IOException {
    List<Fault> faults = read(text).faults();
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0).message();
  }

  /** Statics by hand: 0.2 kg x 9.80665 x 5 = 9.80665 N at x -30, two thirds of the way to the rear: 1/6 and 1/3 each. */
  @Test
  void needs_centreBehindTheMiddle_shareByTheLever() throws IOException {
    TruckFit fit = fit(FOUR.formatted(""));
    assertEquals(List.of("front-left", "front-right", "rear-left", "rear-right"), fit.sites().stream().map(Site::name).toList());
    assertEquals(9.80665 / 6, fit.needs().get(fit.sites().get(0)).up(), 1e-9);
    assertEquals(9.80665 / 3, fit.needs().get(fit.sites().get(3)).up(), 1e-9);
    assertEquals(16 + 2 + 11, fit.sites().get(0).y());
  }

  /** A centre 20 mm over the floor: 9.80665 N x 20 mm over a track of 58 mm, shared by two pairs. */
  @Test
  void needs_centreAboveTheFloor_leansOnTheMountsAcross() throws IOException {
    TruckFit fit = fit(FOUR.formatted("").replace("26]", "46]"));
    assertEquals(9.80665 * 20 / 58 / 2, fit.needs().get(fit.sites().get(0)).side(), 1e-9);
    assertEquals(9.80665 * 20 / 60 / 2, fit.needs().get(fit.sites().get(0)).fore(), 1e-9);
  }

  @Test
  void heights_eachChain_addsUpToTheFloor() throws IOException {
    TruckFit fit = fit(FOUR.formatted(""));
    for (Height height : fit.heights().values()) {
      assertEquals(0, height.members().stream().mapToDouble(m -> m.sign() * m.size().mm()).sum(), 1e-9);
      assertEquals(Optional.of("post"), height.solvedFor());
    }
  }

  @Test
  void choice_magnets_holdAndNothingSmallerDoes() throws IOException {
    TruckFit fit = fit(FOUR.formatted(""));
    for (Site site : fit.sites()) {
      assertTrue(fit.choices().get(site).hold().counted() >= fit.needs().get(site).most());
    }
    assertTrue(read("[on-hand]\nhardware = [\"10x3 magnet:8\"]\n" + FOUR.formatted("")).fit().orElseThrow().choices().values()
        .stream().allMatch(c -> c.magnet().name().equals("10x3")));
  }

  /** Turned by half a turn, each magnet lies over the mount across, and all four pairs must push. */
  @Test
  void poles_turnedAbout_allPush() throws IOException {
    TruckFit fit = fit(FOUR.formatted(""));
    List<Site> sites = fit.sites();
    for (int i = 0; i < 4; i++) {
      assertTrue(fit.pole(sites.get(i)) != fit.pole(sites.get(3 - i)), fit.poles().up().toString());
    }
    assertTrue(fit.poles().open().stream().noneMatch(words -> words.contains("4 of 4")), fit.poles().open().toString());
    TruckFit south = fit(FOUR.formatted("pole = \"s\""));
    assertEquals(Pole.S, south.pole(south.sites().get(0)));
  }

  @Test
  void read_valuesThatFight_areNamed() throws IOException {
    String told = refusal(FOUR.formatted("post = 30"));
    assertTrue(told.contains("over-determined and its values fight: post 30 + pocket-floor 1.6") && told.contains("floor 26")
        && told.contains("line 12"), told);
  }

  @Test
  void read_twoFree_areNamed() throws IOException {
    String told = refusal(FOUR.formatted("pad = \"solve\""));
    assertTrue(told.contains("under-determined: post and pad"), told);
  }

  @Test
  void read_bodyBelowRails_saysTheLowestFloor() throws IOException {
    String told = refusal(FOUR.formatted("").replaceFirst("floor = 26", "floor = -3"));
    assertTrue(told.contains("lies 3 mm below the rails' tops") && told.contains("The lowest floor that works is"), told);
  }

  @Test
  void read_weakMagnets_saysWhatWouldHold() throws IOException {
    List<String> told = read("[on-hand]\nhardware = [\"3x1 magnet:40\"]\n" + FOUR.formatted("").replace("mass = 200",
        "mass = 900")).faults().stream().map(Fault::message).toList();
    assertEquals(2, told.size());
    assertTrue(told.get(0).contains("no magnet on hand holds") && told.get(0).contains("The smallest that holds is"), told.get(0));
  }

  @Test
  void read_tooFewMagnets_saysSo() throws IOException {
    String told = refusal("[on-hand]\nhardware = [\"8x3 magnet:6\"]\n" + FOUR.formatted(""));
    assertTrue(told.contains("do not go round") && told.contains("at least 8 discs"), told);
  }

  /** The field of a disc must fit into the steel: half as thick as it needs is refused, as thick as told is taken. */
  @Test
  void read_steelTooThin_saysWhichThicknessWorks() throws IOException {
    String plan = FOUR.replace("%s", "facing = \"steel\"\nsteel = 0.3\nsteel-width = 20\nmagnet = \"8x3\"");
    String told = refusal(plan);
    assertTrue(told.contains("the steel is 0.3 mm thick, which 1 x 8x3 saturates"), told);
    java.util.regex.Matcher works = java.util.regex.Pattern.compile("Steel ([0-9.]+) mm thick and 16 mm wide").matcher(told);
    assertTrue(works.find(), told);
    assertTrue(fit(plan.replace("steel = 0.3", "steel = " + works.group(1))).sites().size() == 4);
    String narrow = refusal(plan.replace("steel = 0.3", "steel = 3").replace("steel-width = 20", "steel-width = 10"));
    assertTrue(narrow.contains("the steel is 10 mm wide"), narrow);
  }

  private static String low(String drawer) {
    return drawer + FOUR.formatted("post = \"solve\"").replace("floor = 26\n[[part]]",
        "floor = 26.1\n[[part]]");
  }

  /**
   * Layers of 0.2 after a first of 0.2: one station comes out exactly, the other misses its 26.1 by half a layer. Half of
   * that twice is exact; a piece of 3 mm is nowhere near, and the shop has what is.
   */
  @Test
  void shims_onHand_areTheFewestThatReach() throws IOException {
    Shim bare = fit(low("")).shims().get(0);
    double mm = bare.mm();
    assertTrue(Math.abs(mm - 0.1) < 1e-9 && bare.stack().isEmpty(), bare.words());
    Shim two = fit(low("[on-hand]\nshims = [\"" + mm / 2 + ":2\", \"3\"]\n")).shims().get(0);
    assertEquals(2, two.stack().orElseThrow().pieces(), two.words());
    assertTrue(two.words().contains("on hand 2 x ") && two.words().contains("(exact)"), two.words());
    Shim far = fit(low("[on-hand]\nshims = [\"3\"]\n")).shims().get(0);
    assertTrue(far.words().contains("nothing on hand comes within") && far.words().contains("nearest 3 mm shim")
        && far.words().contains("to buy: "), far.words());
  }

  @Test
  void read_shimTwice_isRefused() throws IOException {
    assertTrue(refusal("[on-hand]\nshims = [0.1, 0.1]\n" + FOUR.formatted("")).contains("shims names 0.1 mm twice"));
  }

  /** Both at once: what is wrong with the heights does not hide an item that no truck of 200 mm carries. */
  @Test
  void read_bodyBelowRailsAndItemLargerThanTheTruck_tellsBoth() throws IOException {
    List<String> told = read(FOUR.formatted("").replaceFirst("floor = 26", "floor = -3").replace("[[part]]",
        "[[item]]\nname = \"log\"\nlength = 20\nwidth = 350\n[[part]]")).faults().stream().map(Fault::message).toList();
    assertEquals(2, told.size(), told.toString());
    assertTrue(told.get(0).contains("below the rails' tops"), told.get(0));
    assertTrue(told.get(1).contains("log is 350 mm wide, 150 mm more than the rails") && told.get(1).contains("width: "),
        told.get(1));
  }

  /** Heads at 22.6041 and 22.6082 solved: drawn as they are engraved, what that leaves out counted as known error. */
  @Test
  void solve_heightsCloserThanTheirMarks_areDrawnAsMarked() throws IOException {
    TruckFit fit = fit(FOUR.formatted("stack = 1").replace("floor = 26\nstack", "floor = 26.0041\nstack")
        .replace("floor = 26\n[[part]]", "floor = 26.0082\n[[part]]"));
    List<Double> heads = fit.heights().values().stream().map(Height::head).distinct().toList();
    for (double head : heads) {
      assertEquals(Math.rint(head * 100) / 100, head, 0.0);
    }
    fit.heights().values().forEach(height -> assertEquals(height.floor() + height.error(), Math.rint((height.floor()
        + height.error()) * 10) / 10, 1e-6, "printed in whole layers of 0.2 from a first of 0.2: " + height));
  }

  /** Sixteen mounts are too many to try all choices: what is given stands all the same, and not all look one way. */
  @Test
  void poles_manyMounts_keepWhatIsGiven() throws IOException {
    StringBuilder plan = new StringBuilder("[rail]\nfront = 30\nlength = 290\n[body]\nmass = 200\n");
    for (int i = 0; i < 8; i++) {
      plan.append("[[mount]]\nname = \"m").append(i).append("\"\nx = ").append(6 - 27 * i).append("\nreach = ")
          .append(11 + i % 3).append(i == 3 ? "\npole = \"s\"\n" : i == 4 ? "\npole = \"n\"\n" : "\n");
    }
    TruckFit fit = fit(plan + "[[part]]\nkind = \"body-mount\"\n");
    assertEquals(16, fit.sites().size());
    for (Site site : fit.sites()) {
      Pole given = site.mount().record().pole();
      assertTrue(given == Pole.NONE || given == fit.pole(site), site.name());
    }
    assertEquals(2, fit.poles().up().values().stream().distinct().count());
    assertTrue(fit.poles().open().size() < fit.poles().wrong());
  }
}
