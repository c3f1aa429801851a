package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** What users see of printability. The hook is a block of 20 x 20 x 10 mm. */
class PrintingTest {
  @TempDir
  Path folder;

  private Run make(String... more) {
    List<String> args = new java.util.ArrayList<>(List.of("make", "hook", "--out", folder.resolve("out").toString()));
    args.addAll(List.of(more));
    return Run.hook(args.toArray(String[]::new));
  }

  @Test
  void make_error_exits3AndWritesNothing() {
    Run run = make("--limit", "bed-z=5");
    assertEquals(Exit.UNSOUND, run.exit());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("hook:\n  ERROR bed-fit at ("), run.err());
    assertTrue(run.err().contains("(10, limit 5 mm by bed-z)"), run.err());
    assertTrue(run.err().endsWith("1 part is sound but will not print as drawn; nothing was written. Change what is "
        + "advised, or give --write-anyway.\n"), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void make_writeAnyway_writesAndTells() {
    Run run = make("--limit", "bed-z=5", "--write-anyway");
    assertEquals(Exit.DONE, run.exit());
    assertTrue(run.out().contains("  printing: 1 error\n    ERROR bed-fit at ("), run.out());
    assertTrue(Files.exists(folder.resolve("out/hook.stl")));
  }

  @Test
  void make_caution_writes() {
    Run run = Run.of(Accessories.kinds(), "make", "bumper-spacer", "--thickness", "4.3", "--out",
        folder.resolve("out").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(run.out().contains("  printing: 1 caution\n    caution between-layers at ("), run.out());
    assertTrue(Files.exists(folder.resolve("out/bumper-spacer.stl")));
  }

  @Test
  void make_errorInJson_isOneObjectWithPlaceAndLimit() throws IOException {
    Run run = make("--limit", "bed-z=5", "--json");
    assertEquals(Exit.UNSOUND, run.exit());
    assertEquals("", run.err());
    try (JsonParser parser = new JsonFactory().createParser(run.out())) {
      while (parser.nextToken() != null) {
        // reading it through is the test
      }
    }
    for (String member : List.of("\"prints\" : false", "\"rule\" : \"bed-fit\"", "\"severity\" : \"error\"",
        "\"place-mm\" : ", "\"measured\" : 10", "\"bound\" : 5", "\"limit\" : \"bed-z\"", "\"limit-standing\" : ")) {
      assertTrue(run.out().contains(member), member + " in " + run.out());
    }
  }

  @Test
  void make_badLimit_exits2InWords() {
    assertEquals("there is no limit \"bedz\" (option --limit). Did you mean bed-z or bed-x or bed-y?\n",
        make("--limit", "bedz=5").err());
    assertEquals("bed-z is -5 (option --limit), outside 1 to 2000 mm. Give a value in that range.\n",
        make("--limit", "bed-z=-5").err());
    assertEquals(Exit.BAD_INPUT, make("--limit", "bed-z").exit());
    assertEquals(Exit.BAD_INPUT, make("--limit", "overhang=NaN").exit());
    assertEquals(Exit.DONE, make("--limit", "brim=0.1in").exit());
  }

  @Test
  void batch_limitsOfOnePart_holdForItAlone() throws IOException {
    Path plan = Files.writeString(folder.resolve("p.toml"), """
        [[part]]
        kind = "hook"
        name = "a"
        limits = { bed-z = 5 }
        [[part]]
        kind = "hook"
        name = "b"
        """);
    Run run = Run.hook("batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.UNSOUND, run.exit());
    assertTrue(run.err().startsWith("a:\n  ERROR bed-fit"), run.err());
    assertFalse(run.err().contains("b:\n"), run.err());
    Run wider = Run.hook("batch", plan.toString(), "--out", folder.resolve("out").toString(), "--limit", "bed-z=50");
    assertEquals(Exit.DONE, wider.exit(), wider.err());
  }

  @Test
  void batch_badLimits_areToldWithTheirPlaces() throws IOException {
    Path plan = Files.writeString(folder.resolve("p.toml"), """
        [[part]]
        kind = "hook"
        limits = { overhang = 95, nozle = 1 }
        """);
    Run run = Run.hook("batch", plan.toString(), "--out", folder.resolve("out").toString());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertTrue(run.err().contains("overhang is 95 (p.toml, line 3, column 12), outside 0 to 89 degree."), run.err());
    assertTrue(run.err().contains("there is no limit \"nozle\" (p.toml, line 3, column 27). Did you mean nozzle?"),
        run.err());
  }

  @Test
  void check_error_exits3AndPictureIsDrawn() {
    make();
    String file = folder.resolve("out/hook.stl").toString();
    Run run = Run.hook("check", file, "--limit", "bed-z=5", "--picture", "--out", folder.resolve("seen").toString());
    assertEquals(Exit.UNSOUND, run.exit());
    assertTrue(run.out().startsWith(file + ": sound, but WILL NOT PRINT AS DRAWN\n"), run.out());
    assertTrue(Files.exists(folder.resolve("seen/hook.map.png")));
    assertEquals(Exit.DONE, Run.hook("check", file).exit());
  }

  @Test
  void check_unknownPrinter_exits2() {
    Run run = Run.hook("check", "x.stl", "--printer", "demo-0,4");
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("there is no printer \"demo-0,4\". Did you mean demo-0.4 or demo-0.6 or demo-0.25?\n", run.err());
  }
}
