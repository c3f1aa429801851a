package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;
import outrigger.generator.plan.Names;

class MakeTest {
  @TempDir
  Path folder;

  private String out() {
    return folder.toString();
  }

  @Test
  void make_hook_tellsWhatItWrote() throws IOException {
    Run run = Run.hook("make", "hook", "--width", "0.5in", "--name", "a", "--material", "PLA", "--out", out());
    assertEquals("", run.err());
    assertEquals(folder.resolve("a.stl") + """
        : hook, 12.7 x 12.7 x 10 mm, 684 bytes, sound
          volume 1612.888 mm3, 2 g printed solid in PLA, 12 facets
          height 10 mm
          prints: Flat on the bed.
          note: It is a block.
          needs: 2 x M3-socket
        """, run.outWithoutPrinting());
    assertTrue(run.out().contains("\n  printing: no concern\n"), run.out());
    assertEquals(Exit.DONE, run.exit());
    assertEquals(684, Files.size(folder.resolve("a.stl")));
    assertEquals(List.of("a.stl"), BadOptionsTest.list(folder));
  }

  @Test
  void make_set_writesOneFileEach() throws IOException {
    Run run = Run.hook("make", "hook", "--set", "2,0.1in", "--out", out());
    assertEquals("", run.err());
    assertEquals(List.of("hook-2.54.stl", "hook-2.stl"), BadOptionsTest.list(folder));
  }

  @Test
  void make_twice_writesTheSameBytes() throws IOException {
    Run.hook("make", "hook", "--out", out());
    byte[] once = Files.readAllBytes(folder.resolve("hook.stl"));
    Run.hook("make", "hook", "--out", out());
    assertArrayEquals(once, Files.readAllBytes(folder.resolve("hook.stl")));
  }

  @Test
  void make_picture_liesBesideThePrintFile() throws IOException {
    Run run = Run.hook("make", "hook", "--out", out(), "--picture");
    assertEquals("", run.err());
    assertEquals(List.of("hook.map.png", "hook.png", "hook.stl"), BadOptionsTest.list(folder));
    byte[] once = Files.readAllBytes(folder.resolve("hook.png"));
    Run.hook("make", "hook", "--out", out(), "--picture");
    assertArrayEquals(once, Files.readAllBytes(folder.resolve("hook.png")));
  }

  @Test
  void make_pictureOfThePartWithTheLongestName_isDrawn() throws IOException {
    String name = "w".repeat(Names.LONGEST);
    Run run = Run.hook("make", "hook", "--name", name, "--out", out(), "--picture");
    assertEquals("", run.err());
    assertEquals(List.of(name + ".map.png", name + ".png", name + ".stl"), BadOptionsTest.list(folder));
  }

  @Test
  void make_pictureThatCannotBeWritten_writesNoPrintFileEither() throws IOException {
    Files.createDirectory(folder.resolve("hook.png"));
    Run run = Run.hook("make", "hook", "--out", out(), "--picture");
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("there is a folder named hook.png in " + folder
        + ", where a file is to be written. Move it away or give another folder with --out.\n", run.err());
    assertEquals(List.of("hook.png"), BadOptionsTest.list(folder));
  }

  @Test
  void make_pictureWithAValue_isRefused() throws IOException {
    Run run = Run.hook("make", "hook", "--out", out(), "--picture=big");
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertTrue(run.err().contains("picture"), run.err());
    assertEquals(List.of(), BadOptionsTest.list(folder));
  }

  @Test
  void make_help_namesThePicture() {
    assertTrue(Run.hook("make", "hook", "--help").out().contains("Draw the part beside its file, NAME.png, and what"));
  }

  @Test
  void make_help_namesRangeUnitAndDefault() {
    Run run = Run.hook("make", "hook", "--help");
    assertEquals("", run.err());
    assertEquals(Exit.DONE, run.exit());
    assertTrue(run.out().contains("--width=LENGTH        Width, 100% of it. (1 to 200 mm; default 20 mm)\n"), run.out());
    assertTrue(run.out().contains("--lean=DEGREES        Lean. (0 to 60 degrees; default 30 degrees)\n"), run.out());
    assertTrue(run.out().contains("--side=left|right     Hand. (default left)\n"), run.out());
    assertTrue(run.out().contains("--screw=SCREW         Screw. (a name of the table screws; default M3-socket)\n"),
        run.out());
    assertTrue(run.out().indexOf("--wall-thickness") < run.out().indexOf("--lean"), "declared order");
  }

  @Test
  void help_ofEveryKind_isPrinted() {
    for (String kind : Accessories.kinds().names()) {
      Run run = Run.of(Accessories.kinds(), "make", kind, "--help");
      assertEquals(Exit.DONE, run.exit(), run.err());
      assertTrue(run.out().startsWith(Accessories.kinds().find(kind).orElseThrow().summary().substring(0, 20)));
    }
  }

  @Test
  void version_isPrinted() {
    assertTrue(Run.hook("--version").out().matches("outrigger [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)?\n"));
  }

  @Test
  void noCommand_isRefusedWithTheCommands() {
    Run run = Run.hook();
    assertEquals("outrigger: needs a command. Give one of: make, batch, plan, check, hold, stack, presets or kinds. For help: outrigger "
        + "--help.\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
  }

  @Test
  void presets_ofTheUser_areUsed() throws IOException {
    Path own = Files.writeString(folder.resolve("own.toml"), """
        [source.callipers]
        kind = "user"
        text = "Callipers"

        [[screws.row]]
        name = "M3-socket"
        head-height = 2.9
        source = "callipers"
        """);
    Run run = Run.hook("presets", "screws", "--presets", own.toString(), "--sources");
    assertEquals("", run.err());
    assertTrue(run.out().contains("  user: Callipers (" + own + ")\n    head-height of M3-socket\n"), run.out());
  }
}
