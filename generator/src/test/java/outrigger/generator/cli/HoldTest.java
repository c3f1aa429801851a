package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldTest {
  @TempDir
  Path folder;

  private static Run run(String options) {
    return Run.hook(Stream.concat(Stream.of("hold"), Stream.of(options.split(" ")).filter(o -> !o.isEmpty()))
        .toArray(String[]::new));
  }

  /** Every command of docs/hold.md whose output the page shows prints that and nothing else. */
  @Test
  void page_everyExample_printsWhatThePageShows() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "hold.md")).replace("\r\n", "\n");
    List<MatchResult> examples = Pattern.compile("```sh\n\\S+ hold ?(.*?)\n```\n\n```text\n(.*?)```", Pattern.DOTALL)
        .matcher(page).results().toList();
    assertEquals(2, examples.size());
    for (MatchResult example : examples) {
      Run run = run(example.group(1));
      assertEquals("", run.err());
      assertEquals(example.group(2), run.out());
      assertEquals(Exit.DONE, run.exit());
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "--magnet 7x2 | hold: magnet is \"7x2\" (option --magnet), and no disc magnet of that name is on the shelf. "
          + "Did you mean 6x2 or 8x2 or 5x2?",
      "--grade N43 | hold: grade is \"N43\" (option --grade), table magnet-grades has no \"N43\". "
          + "Did you mean N42 or N45 or N40?",
      "--facing wood | hold: facing is \"wood\" (option --facing), not one of: magnet, steel. Known are: magnet, "
          + "steel.",
      "--stack 0 | hold: stack is 0 (option --stack), below the minimum of 1. Use 1 or more.",
      "--gap 1 | outrigger hold: there is no option --gap. For all options: outrigger hold --help.",
      "--pad -0.1 | hold: pad is -0.1 mm (option --pad), below the minimum of 0 mm. Use 0 mm or more.",
      "--pad 1in | hold: pad is 25.4 mm (option --pad, written 1in), above the maximum of 10 mm. Use 10 mm or less.",
      "--mass nan | hold: mass is \"nan\" (option --mass), not a mass: not a number. Write a mass in g, kg, oz or "
          + "lb, such as 150, 150g, 0.4kg or 6oz.",
      "--mass 0 | hold: mass is 0 g (option --mass), below the minimum of 1 g. Use 1 g or more.",
      "--mass 1kilo | hold: mass is \"1kilo\" (option --mass), not a mass: unknown unit \"kilo\". Write a mass in g, kg, oz or "
          + "lb, such as 150, 150g, 0.4kg or 6oz.",
      "--temperature hot | hold: temperature is \"hot\" (option --temperature), not a temperature: not a number. "
          + "Write a temperature in degrees Celsius, such as 40 or 40C.",
      "--temperature 300C | hold: temperature is 300 degrees C (option --temperature, written 300C), above the maximum "
          + "of 200 degrees C. Use 200 degrees C or less.",
      "--temperature 90 | hold: temperature is 90 degrees C, but magnets of grade N42 lose strength for good above "
          + "80 degrees C (temperature: option --temperature). Keep them cooler, or take a grade that stands it.",
      "--temperature 70 --facing-grade N52 | hold: temperature is 70 degrees C, but magnets of grade N52 lose strength "
          + "for good above 60 degrees C (temperature: option --temperature). Keep them cooler, or take a grade that "
          + "stands it.",
      "--facing steel --facing-magnet 8x2 | hold: facing-magnet has nothing to act on, since facing is steel "
          + "(facing-magnet: option --facing-magnet). Leave it out, or set facing to magnet.",
      "--facing steel --facing-stack 2 | hold: facing-stack has nothing to act on, since facing is steel "
          + "(facing-stack: option --facing-stack). Leave it out, or set facing to magnet.",
      "--steel-width 20 | hold: steel-width has nothing to act on, since facing is magnet (steel-width: option "
          + "--steel-width). Leave it out, or set facing to steel.",
      "--out x | outrigger hold: there is no option --out. For all options: outrigger hold --help.",
      "6x2 | outrigger hold: there is nothing to do with \"6x2\". Options begin with two dashes; for help: outrigger "
          + "hold --help.",
  })
  void hold_badOption_isRefusedWhole(String options, String message) {
    Run run = run(options);
    assertEquals(message + "\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("", run.out());
  }

  @Test
  void hold_gradeOnNoShelf_isRefusedAndTakenFromATableFile() throws IOException {
    Path drawer = Files.writeString(folder.resolve("drawer.toml"),
        "[[disc-magnets.row]]\nname = \"6x2\"\ngrade = \"N42SH\"\n");
    assertEquals("hold: the magnet 6x2 is of grade \"N42SH\", which the table magnet-grades has no row for (grade is "
        + "at its default as-listed). Give grade, or add that grade to a table file of your own.\n",
        run("--presets " + drawer).err());
    Files.writeString(drawer, "[[disc-magnets.row]]\nname = \"6x2\"\ngrade = \"N42SH\"\n[[magnet-grades.row]]\n"
        + "name = \"N42SH\"\nremanence-min = 1.28\nremanence-max = 1.32\nloss = 0.12\nmaximum-temperature = 150\n");
    Run run = run("--temperature 120 --presets " + drawer);
    assertEquals("6x2 (N42SH) against 6x2 (N42SH) at 120 degrees C", run.out().lines().findFirst().orElseThrow());
  }

  @Test
  void hold_severalFaults_tellsAll() {
    Run run = run("--stack 11 --pad wide --shock 0");
    assertEquals(4, run.err().lines().count());
    assertEquals(Exit.BAD_INPUT, run.exit());
  }

  @Test
  void hold_tooHeavy_saysHowManyMountsWould() {
    String out = run("--mass 900").out();
    assertTrue(out.contains("margin 0.26, IT DOES NOT HOLD. 15 such mounts would;"), out);
  }

  @Test
  void hold_thinSteel_isNotTrusted() {
    String out = run("--facing steel --steel-thickness 0.5 --facing-recess 0 --mass 50").out();
    assertTrue(out.contains("; what is given is less and holds less."), out);
    assertTrue(out.contains("but not with this steel: take thicker or wider steel, or a magnet."), out);
    assertTrue(out.contains("steel does not pull the body back to its place."), out);
  }

  @Test
  void json_steel_tellsAll() {
    String out = run("--facing steel --recess 0 --facing-recess 0 --plating 0 --to 1 --steps 2 --json").out();
    assertTrue(out.startsWith("""
        {
          "ok" : true,
          "exit" : 0,
          "magnet" : "6x2",
          "stack" : 1,
          "grade" : "N42",
          "facing" : "steel",
          "steel-thickness-needed" : 0.803301,
          "steel-width-needed" : 12,
          "steel-enough" : true,
          "temperature" : 20,
          "gap" : {
            "nominal" : 0,
            "least" : 0,
            "greatest" : 0,
            "parts" : [ ]
          },
          "pull" : {
            "least" : 8.91742,
            "middle" : 9.198267,
            "greatest" : 9.483467
          },
        """), out);
    assertTrue(out.contains("\"gap\" : 0.5,\n      \"least\" : 3.524517,\n      \"middle\" : 3.635518"), out);
  }

  @Test
  void json_pair_isOneObjectWithBothMagnets() {
    String out = run("--facing-magnet 8x2 --facing-stack 2 --json").out();
    assertTrue(out.contains("\"facing-magnet\" : \"8x2\",\n  \"facing-stack\" : 2,\n  "
        + "\"facing-grade\" : \"N42\""), out);
  }
}
