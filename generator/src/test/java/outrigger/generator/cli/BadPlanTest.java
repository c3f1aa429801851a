package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad plans: exit 2, every fault at once with line and column, nothing written or changed. */
class BadPlanTest {
  @TempDir
  Path folder;
  private Path plan;
  private Path out;

  @BeforeEach
  void placeFiles() throws IOException {
    plan = folder.resolve("p.toml");
    out = Files.createDirectory(folder.resolve("out"));
    Files.writeString(out.resolve("a.stl"), "of an earlier run");
  }

  private void assertRefused(List<String> messages, Run run) {
    String last = messages.size() > 1 ? messages.size() + " faults; nothing was written.\n" : "";
    assertAll(
        () -> assertEquals(String.join("\n", messages) + "\n" + last, run.err()),
        () -> assertEquals(Exit.BAD_INPUT, run.exit()),
        () -> assertEquals("", run.out()),
        () -> assertEquals(List.of("a.stl"), BadOptionsTest.list(out)),
        () -> assertEquals("of an earlier run", Files.readString(out.resolve("a.stl"))));
  }

  private Run batch(String text) throws IOException {
    Files.writeString(plan, text);
    return Run.hook("batch", plan.toString(), "--out", out.toString());
  }

  /** One part at line 1 (kind, name at lines 2 and 3); what is given stands at line 4. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "width = -3 | a: width is -3 mm (p.toml, line 4, column 1), below the minimum of 1 mm. Use 1 mm or more.",
      "width = 0 | a: width is 0 mm (p.toml, line 4, column 1), below the minimum of 1 mm. Use 1 mm or more.",
      "width = 1e9 | a: width is 1.0E9 mm (p.toml, line 4, column 1, written 1E+9), above the maximum of 200 mm. "
          + "Use 200 mm or less.",
      "width = nan | a: width is \"nan\" (p.toml, line 4, column 1), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "width = -inf | a: width is \"-inf\" (p.toml, line 4, column 1), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "width = \"10in\" | a: width is 254 mm (p.toml, line 4, column 1, written 10in), above the maximum of 200 mm. "
          + "Use 200 mm or less.",
      "width = \"3 stone\" | a: width is \"3 stone\" (p.toml, line 4, column 1), not a length: unknown unit \"stone\". "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "width = true | a: width is \"true\" (p.toml, line 4, column 1), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "width = { mm = 3 } | a: width is a table (p.toml, line 4, column 1), which it cannot be. "
          + "Give a number, a text in quotes, true or false.",
      "width = 2026-01-01 | a: width is a date or time (p.toml, line 4, column 1), which it cannot be. "
          + "Give a number, a text in quotes, true or false.",
      "width = [] | a: width is an empty list (p.toml, line 4, column 1), so that no part would be made. "
          + "Give at least one value or leave it out.",
      "width = [[5]] | a: width is a list (p.toml, line 4, column 10), which it cannot be. "
          + "Give a number, a text in quotes, true or false.",
      "width = [10, -3] | a-width--3: width is -3 mm (p.toml, line 4, column 14), below the minimum of 1 mm. "
          + "Use 1 mm or more.",
      "width = [10, 10.0] | a-width-10: two parts have this name (p.toml, line 3, column 1). "
          + "Give each value of a list once.",
      "set = [2, \"x\"] | a: set is \"x\" (p.toml, line 4, column 1), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "screws = 1.5 | a: screws is \"1.5\" (p.toml, line 4, column 1), not a whole number. Write a count such as 1.",
      "marked = 1 | a: marked is \"1\" (p.toml, line 4, column 1), neither yes nor no. Write yes or no.",
      "screw = \"M3-scoket\" | a: screw is \"M3-scoket\" (p.toml, line 4, column 1), and no screw of that name is on "
          + "the shelf. Did you mean M3-socket or M2-socket or M4-socket?",
      "widht = 3 | a: there is no parameter \"widht\" (p.toml, line 4, column 1). Did you mean width?",
      "\"../x\" = 3 | a: there is no parameter \"../x\" (p.toml, line 4, column 1). Known are: printer, width, height, "
          + "wall-thickness, lean, screws, screw, side, marked, label, set.",
      "wall-thickness = 9\\nwidth = 18 | a: two walls of 9 mm leave no room in a width of 18 mm "
          + "(wall-thickness: p.toml, line 4, column 1). Lower wall-thickness or raise width.",
      "width = 4 | a: two walls of 2 mm leave no room in a width of 4 mm (wall-thickness is at its default 2) "
          + "(part at p.toml, line 3, column 1). Lower wall-thickness or raise width.",
      "label = \"lost\" | a: table screws has no \"M3-sockt\" (part at p.toml, line 3, column 1). "
          + "Did you mean M3-socket or M2-socket or M4-socket?",
      "width = 30\\nwidth = 40 | \"width\" is given twice (p.toml, line 5, column 1; first at line 4, column 1). "
          + "Leave one of them out.",
      "width = 6mm | the plan is not valid TOML (p.toml, line 4, column 10): unexpected 'mm', expected a newline or "
          + "end-of-input. Put values with a unit, and other words, in quotes, such as \"0.25in\".",
      "width = 99999999999999999999 | the plan is not valid TOML (p.toml, line 4, column 9): integer is too large. "
          + "Use a smaller number.",
  })
  void part_badValue_isRefusedAtItsPlace(String line, String message) throws IOException {
    assertRefused(List.of(message),
        batch("[[part]]\nkind = \"hook\"\nname = \"a\"\n" + line.replace("\\n", "\n") + "\n"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "../x", "a/b", "a\\\\b", ".hidden", "trailing.", "sp ace", "\u00fcber", "\u0430", "-dash", "~",
  })
  void part_nameThatIsNoFileName_isRefused(String name) throws IOException {
    assertRefused(List.of("the name \"" + name.replace("\\\\", "\\") + "\" (p.toml, line 3, column 1) cannot be a file "
        + "name everywhere. Use letters a to z, digits, dashes, points between them; begin and end with a letter or "
        + "digit."), batch("[[part]]\nkind = \"hook\"\nname = \"" + name + "\"\nwidth = [10, 12]\n"));
  }

  @ParameterizedTest
  @CsvSource({"con", "NUL", "Aux.v2", "lpt1"})
  void part_reservedName_isRefused(String name) throws IOException {
    assertRefused(List.of("the name \"" + name + "\" (p.toml, line 3, column 1) is reserved on some systems. "
        + "Choose another name."), batch("[[part]]\nkind = \"hook\"\nname = \"" + name + "\"\n"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "`` | the plan asks for no part (p.toml). Begin each part with a line [[part]], then kind = \"...\".",
      "part = 3 | the plan asks for no part (p.toml, line 1, column 1). Begin each part with a line [[part]], "
          + "then kind = \"...\".",
      "part = [] | the plan asks for no part (p.toml, line 1, column 1). Begin each part with a line [[part]], "
          + "then kind = \"...\".",
      "[part]\\nkind = \"hook\" | the plan asks for no part (p.toml, line 1, column 1). Begin each part with a line "
          + "[[part]], then kind = \"...\".",
      "part = [1] | a part is a number (p.toml, line 1, column 9). Begin each part with a line [[part]].",
      "[[part]] | a part has no kind (p.toml, line 1, column 1). Add kind = \"...\", one of: hook.",
      "[[part]]\\nkind = 3 | kind is a number (p.toml, line 2, column 1), not a text. Write it in quotes.",
      "[[part]]\\nkind = \"hok\" | there is no kind \"hok\" (p.toml, line 2, column 1). Did you mean hook?",
      "title = 3\\n[[part]]\\nkind = \"hook\" | title is a number, not a text (p.toml, line 1, column 1). "
          + "Write it in quotes.",
      "tilte = \"x\"\\n[[part]]\\nkind = \"hook\" | there is no top key \"tilte\" (p.toml, line 1, column 1). "
          + "Did you mean title?",
      "printer = \"demo-0.5\"\\n[[part]]\\nkind = \"hook\" | hook: printer is \"demo-0.5\" (p.toml, line 1, column 1), "
          + "and no printer of that name is on the shelf. Did you mean demo-0.4 or demo-0.6 or demo-0.25?",
      "material = \"PLAA\"\\n[[part]]\\nkind = \"hook\" | material is \"PLAA\" (p.toml, line 1, column 1), and no "
          + "material of that name is on the shelf. Did you mean PLA?",
      "defaults = 3\\n[[part]]\\nkind = \"hook\" | defaults is no table (p.toml, line 1, column 1). "
          + "Begin it with a line [defaults].",
      "[defaults]\\nwidht = 3\\n[[part]]\\nkind = \"hook\" | defaults: no kind has a parameter \"widht\" (p.toml, "
          + "line 2, column 1). Did you mean width?",
      "[defaults]\\nwidth = 900\\n[[part]]\\nkind = \"hook\"\\n[[part]]\\nkind = \"hook\"\\nname = \"b\" | hook: width is "
          + "900 mm (p.toml, line 2, column 1), above the maximum of 200 mm. Use 200 mm or less.",
      "[[part]]\\nkind = \"hook\"\\n[[part]]\\nkind = \"hook\"\\nname = \"HOOK\" | HOOK: two parts have this name (p.toml, "
          + "line 5, column 1; the first at p.toml, line 1, column 1). Name one of them differently.",
      "[[part]]\\nkind = \"hook\"\\nname = \"a\"\\nset = [2, 3]\\n[[part]]\\nkind = \"hook\"\\nname = \"a-3\" | a-3: two "
          + "parts have this name (p.toml, line 3, column 1; the first at p.toml, line 7, column 1). "
          + "Name one of them differently.",
      "nonsense | the plan is not valid TOML (p.toml, line 1, column 9): unexpected end of line, expected . or =. "
          + "Write each line as key = value, texts in quotes, and begin each part with [[part]].",
  })
  void plan_bad_isRefusedAtItsPlace(String text, String message) throws IOException {
    assertRefused(List.of(message), batch(text.replace("\\n", "\n") + "\n"));
  }

  @Test
  void plan_presetsFileMissing_isRefused() throws IOException {
    assertRefused(List.of(folder.resolve("mine.toml") + ": there is no such file. Check the path."),
        batch("presets = \"mine.toml\"\n[[part]]\nkind = \"hook\"\n"));
  }

  @Test
  void plan_listsThatMakeTooMany_isRefused() throws IOException {
    String numbers = "[" + "10, ".repeat(200) + "]";
    assertRefused(List.of("a: its lists make 40000 parts (p.toml, line 3, column 1), above the maximum of 1000 a plan. "
        + "Shorten a list or split the plan."),
        batch("[[part]]\nkind = \"hook\"\nname = \"a\"\nwidth = " + numbers + "\nheight = " + numbers + "\n"));
  }

  @Test
  void plan_manyFaults_areAllToldInOrder() throws IOException {
    Run run = batch("""
        printer = "demo-0.4"
        titel = "red"
        [[part]]
        kind = "hook"
        name = "a"
        width = nan
        widht = 3
        screws = 9
        [[part]]
        kind = "hokk"
        [[part]]
        kind = "hook"
        name = "../b"
        height = -1
        height = 2
        [[part]]
        kind = "hook"
        name = "A"
        """);
    assertRefused(List.of(
        "there is no top key \"titel\" (p.toml, line 2, column 1). Did you mean title or item?",
        "a: width is \"nan\" (p.toml, line 6, column 1), not a length: not a number. "
            + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
        "a: there is no parameter \"widht\" (p.toml, line 7, column 1). Did you mean width?",
        "a: screws is 9 (p.toml, line 8, column 1), above the maximum of 4. Use 4 or less.",
        "there is no kind \"hokk\" (p.toml, line 10, column 1). Did you mean hook?",
        "the name \"../b\" (p.toml, line 13, column 1) cannot be a file name everywhere. Use letters a to z, digits, "
            + "dashes, points between them; begin and end with a letter or digit.",
        "hook-of-line-11: height is -1 mm (p.toml, line 14, column 1), below the minimum of 1 mm. Use 1 mm or more.",
        "\"height\" is given twice (p.toml, line 15, column 1; first at line 14, column 1). Leave one of them out.",
        "A: two parts have this name (p.toml, line 18, column 1; the first at p.toml, line 5, column 1). "
            + "Name one of them differently."), run);
  }

  @Test
  void plan_isAFolder_isRefused() throws IOException {
    Files.createDirectory(plan);
    assertRefused(List.of(plan + ": the plan is a folder. Give the plan file inside it."),
        Run.hook("batch", plan.toString(), "--out", out.toString()));
  }

  @Test
  void plan_missing_offersTheNearest() throws IOException {
    Files.writeString(folder.resolve("truck.toml"), "");
    assertRefused(List.of(folder.resolve("trukc.toml") + ": there is no such plan file. Did you mean truck.toml?"),
        Run.hook("batch", folder.resolve("trukc.toml").toString(), "--out", out.toString()));
  }

  /** The parser calls itself once a level; it once ran out of stack on such a file. */
  @Test
  void plan_nestedTooDeeply_isRefused() throws IOException {
    Run run = batch("title = \"[[[\" # [[[\n\na = " + "[".repeat(20_000) + "]".repeat(20_000) + "\n");
    assertEquals(Exit.BAD_INPUT, run.exit(), run.err());
    assertTrue(run.err().contains("line 3"), run.err());
    assertTrue(run.err().contains("nested too deeply"), run.err());
  }

  @Test
  void plan_brokenEscape_isRefused() throws IOException {
    Run run = batch("title = \"a\\qb\"\n");
    assertEquals(Exit.BAD_INPUT, run.exit(), run.err());
    assertTrue(run.err().contains("escape"), run.err());
  }

  @Test
  void plan_notUtf8_isRefusedAtItsPlace() throws IOException {
    Files.write(plan, "title = \"x\"\n# gr\u00fcn\n".getBytes(StandardCharsets.ISO_8859_1));
    assertRefused(List.of("the text is not UTF-8 (p.toml, line 2, column 5). Save the plan as UTF-8."),
        Run.hook("batch", plan.toString(), "--out", out.toString()));
  }

  @Test
  void plan_binary_isRefused() throws IOException {
    Files.write(plan, new byte[] {'P', 'K', 3, 4, 0, 0});
    assertRefused(List.of("this is no text (p.toml, line 1, column 5 holds a zero byte). "
        + "Give a plan written as text in TOML."), Run.hook("batch", plan.toString(), "--out", out.toString()));
  }

  @Test
  void plan_tooLarge_isRefused() throws IOException {
    Files.writeString(plan, "#".repeat((1 << 20) + 1));
    assertRefused(List.of(plan + ": the plan is larger than 1048576 bytes, the most that is read. Split it."),
        Run.hook("batch", plan.toString(), "--out", out.toString()));
  }
}
