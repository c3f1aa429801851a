package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** What the working of a truck says, where the plain case would mislead. */
class WorkingWordsTest {
  private static final String MOUNTS = """
      [body]
      mass = 150
      [[mount]]
      name = "front"
      x = 6
      floor = 25
      [[mount]]
      name = "rear"
      x = -50
      floor = "25.37"
      [[part]]
      kind = "body-mount"
      """;

  @TempDir
  Path folder;

  private Run batch(String plan) throws IOException {
    Path file = Files.writeString(folder.resolve("trial.toml"), plan);
    return Run.of(Accessories.kinds(), "batch", file.toString(), "--out", folder.resolve("out").toString(),
        "--write-anyway");
  }

  /** Wrapped lines as one. */
  private static String flat(Run run) {
    assertEquals(Exit.DONE, run.exit(), run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void batch_steel_isNotSaidToPush() throws IOException {
    String out = flat(batch(MOUNTS.replace("x = ", "facing = \"steel\"\nsteel = 1.5\nsteel-width = 20\nx = ")));
    assertTrue(out.contains("Steel has no poles: it is pulled whichever pole looks at it."), out);
    assertFalse(out.contains("more pairs push"), out);
  }

  /** Three mounts without a partner back to front: nowhere else do all of them meet, and nothing is said to push there. */
  @Test
  void batch_noOtherPlaceForAll_saysSo() throws IOException {
    String out = flat(batch(MOUNTS.replace("x = 6", "x = 6\nside = \"left\"")));
    assertTrue(out.contains("Nowhere else do all its magnets meet mounts."), out);
  }

  /** 0.03 mm is thinner than any sheet or shim there is. */
  @Test
  void batch_lowByLessThanAShim_isLeft() throws IOException {
    String out = flat(batch(MOUNTS));
    assertTrue(out.contains("mount front: stands 0.03 mm lower than the highest, less than any shim; leave it."), out);
  }

  @Test
  void batch_itemsWithoutMass_areNamed() throws IOException {
    String out = flat(batch(MOUNTS + "[[part]]\nkind = \"electronics-tray\"\nx = -120\nstraps = 0\n"
        + "items = [\"receiver:22x14x8\"]\n"));
    assertTrue(out.contains("Not weighed, as no mass is told: receiver."), out);
  }

  /** Flanges stand 3.4 mm inward, 1.6 thick, over and under the tray: hung at its default it would lie in the upper one. */
  @Test
  void batch_trayInAChannel_hangsClearOfItsFlanges() throws IOException {
    String out = flat(batch("[rail]\nform = \"channel\"\nspacing = 36\nweb = 1.6\nflange = 5\nheight = 12\n" + MOUNTS
        + "[[part]]\nkind = \"electronics-tray\"\nname = \"tray\"\nx = -120\nstraps = 0\n"));
    assertTrue(out.contains(" 0 clash,"), out);
    assertFalse(out.contains("rail left and tray share"), out);
  }

  /** 33 + 4.1 + 6 = 43.1, and tolerances of 0.5 in all: it passes, but is not said to make 43. */
  @Test
  void batch_bumperThatMissesWithinItsTolerances_tellsByHowMuch() throws IOException {
    String out = flat(batch("[bumper]\nface = 43\nseat = 33\ndepth = 6\nspacer = \"4.1+-0.2\"\n" + MOUNTS));
    assertTrue(out.contains("seat 33 + spacer 4.1 + depth 6 = 43.1 mm along x: nothing was free; that is 0.1 mm past the "
        + "face at 43 mm, which its tolerances allow; spacer 4.1 mm"), out);
  }
}
