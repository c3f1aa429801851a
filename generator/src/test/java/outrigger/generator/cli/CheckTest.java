package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {
  @TempDir
  Path folder;
  private Path sound;

  @BeforeEach
  void makeSound() {
    Run.hook("make", "hook", "--out", folder.toString());
    sound = folder.resolve("hook.stl");
  }

  /** The same file without its last facet. */
  private Path open() throws IOException {
    byte[] bytes = Files.readAllBytes(sound);
    byte[] less = Arrays.copyOf(bytes, bytes.length - 50);
    less[80]--;
    return Files.write(folder.resolve("open.stl"), less);
  }

  @Test
  void check_sound_tellsMeasures() {
    Run run = Run.hook("check", sound.toString());
    assertEquals(sound + """
        : sound
          size 20 x 20 x 10 mm, from (-10, -10, 0) to (10, 10, 10)
          12 triangles, volume 4000 mm3, surface 1600 mm2
          one body, no hole through it
          every corner is taken exactly as it stands in the file
        """, run.outWithoutPrinting());
    assertTrue(run.out().contains("\n  printing: no concern\n"), run.out());
    assertEquals("", run.err());
    assertEquals(Exit.DONE, run.exit());
  }

  @Test
  void check_json_tellsTheLoadAndWhatEstimatesRestOn() {
    String told = Run.hook("check", "--json", "--load", "x", sound.toString()).out();
    assertTrue(told.contains("\"load\" : \"X\""), told);
    assertTrue(told.contains("The band, 0.6 to 1.6 times, is an own estimate; no printed part was timed."), told);
    assertTrue(told.contains("\"low\" : ") && told.contains("\"high\" : "), told);
    assertTrue(Run.hook("check", "--json", sound.toString()).out().contains("\"load\" : \"longest direction, none given\""));
  }

  @Test
  void check_load_isAnAxis() {
    assertTrue(Run.hook("check", "--load", "z", sound.toString()).out().contains("a load along Z pulls apart"));
    Run run = Run.hook("check", "--load", "up", sound.toString());
    assertEquals(2, run.exit());
    assertEquals("there is no axis \"up\". It is X, Y or Z, the axis of the file along which the part is loaded.\n", run.err());
  }

  @Test
  void check_open_tellsWhereAndExits3() throws IOException {
    Run run = Run.hook("check", sound.toString(), open().toString());
    assertEquals(Exit.UNSOUND, run.exit());
    assertEquals("", run.err());
    assertTrue(run.out().contains("\n  printing: not examined, since walls and overhangs"), run.out());
    assertTrue(run.out().contains("open.stl: NOT SOUND\n  open-edge: 3\n    at ("), run.out());
  }

  @Test
  void check_unreadable_exits2ButTellsTheOthers() throws IOException {
    Path cut = Files.write(folder.resolve("cut.stl"), Arrays.copyOf(Files.readAllBytes(sound), 200));
    Run run = Run.hook("check", cut.toString(), sound.toString(), folder.toString());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals(2, run.err().lines().count(), run.err());
    assertTrue(run.err().startsWith(cut + ": "), run.err());
    assertTrue(run.err().endsWith(folder + ": this is a folder. Give the STL files inside it.\n"), run.err());
    assertTrue(run.out().startsWith(sound + ": sound\n"), run.out());
  }

  @Test
  void check_ascii_isRoundedAndTold() throws IOException {
    Path ascii = Files.writeString(folder.resolve("t.stl"), tetrahedron());
    Run run = Run.hook("check", ascii.toString());
    assertEquals(Exit.DONE, run.exit(), run.err() + run.out());
    assertTrue(run.out().contains("corners of triangles were rounded, by at most 0.00"), run.out());
  }

  private static String tetrahedron() {
    String[] p = {"0 0 0", "1.23456 0 0", "0 1 0", "0 0 1"};
    int[][] facets = {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 3, 2}};
    StringBuilder text = new StringBuilder("solid t\n");
    for (int[] f : facets) {
      text.append("facet normal 0 0 0\nouter loop\n");
      for (int corner : f) {
        text.append("vertex ").append(p[corner]).append('\n');
      }
      text.append("endloop\nendfacet\n");
    }
    return text.append("endsolid t\n").toString();
  }
}
