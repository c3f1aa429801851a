package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StackTest {
  private static final Path PAGE = Path.of("..", "docs", "stack.md");
  private static final String COMMAND = "outrigger stack ";

  @TempDir
  Path folder;

  private static Run stack(String options) {
    String[] args = Stream.concat(Stream.of("stack"),
        Arrays.stream(options.split(" ")).map(arg -> arg.equals("\"\"") ? "" : arg)).toArray(String[]::new);
    return Run.hook(args);
  }

  @Test
  void stack_found_isToldWhole() {
    Run run = stack("80thou --sheets 40thou,2mm --block no --tolerance 0.04");
    assertEquals("", run.err());
    assertEquals("""
        2.032 mm, give or take 0.04 mm:

        pieces  total mm  error mm  worst case mm  root-sum-square mm  stack
             1         2    -0.032            0.2                 0.2  2mm sheet
             2     2.032         0          0.203               0.203  2 x 40thou sheet

        Decided all 14 stacks of up to 4 pieces from 2 kinds in 4 look-ups: 2 reach the target.
        Worst case and root-sum-square: how far the stack may be off its total, either way. Pieces of one kind are \
        taken to be off alike.
        Sheet may be off by 10 %: measure yours, and give what you measured with --shims.
        40thou sheet is 1.016 mm, but usually sold as 1 mm.
        """, run.out());
    assertEquals(Exit.DONE, run.exit());
  }

  @Test
  void stack_noneFound_tellsTheNearestAndExits3() {
    Run run = stack("1.9 --sheets \"\" --block no --shims 1 --pieces 2");
    assertEquals("", run.err());
    assertEquals("""
        Nothing of up to 2 pieces reaches 1.9 mm, give or take 0.05 mm.
        Nearest below: 1 mm, 0.9 mm too thin: 1 mm shim.
        Nearest above: 2 mm, 0.1 mm too thick: 2 x 1 mm shim.
        Raise --tolerance to 0.1 or --pieces, or put more at hand.

        Decided all 2 stacks of up to 2 pieces from 1 kind in 2 look-ups: 0 reach the target.
        """, run.out());
    assertEquals(Exit.NONE_FOUND, run.exit());
  }

  @Test
  void stack_json_holdsTheWorking() {
    Run run = stack("1.5 --sheets \"\" --washers M3:2 --json --tolerance 0 --answers 1");
    assertEquals(0, run.exit());
    for (String part : List.of("\"ok\" : true", "\"stack\" : \"1 mm printed block of 5 layers + M3-normal or M3-small "
        + "washer\"", "\"layers-after-first\" : 4", "\"worst-case\" : 0.15", "\"sort\" : \"washer\"",
        "\"reaching\" : 1")) {
      assertTrue(run.out().contains(part), part + " in " + run.out());
    }
  }

  @Test
  void stack_jsonNoneFound_isNotOkAndHoldsTheNearest() {
    Run run = stack("1.9 --sheets \"\" --block no --shims 1 --json");
    assertEquals(Exit.NONE_FOUND, run.exit());
    assertTrue(run.out().startsWith("{\n  \"ok\" : false,\n  \"exit\" : 3,"), run.out());
    assertTrue(run.out().contains("\"above\" : {\n    \"stack\" : \"2 x 1 mm shim\""), run.out());
  }

  @Test
  void stack_ownSheet_isTakenAsMeasured() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.toml"),
        "[[sheet-stock.row]]\nname = \"1mm\"\nthickness = 0.97\ntolerance = 2\n");
    Run run = stack("1.94 --sheets 1mm --block no --tolerance 0 --presets " + file);
    assertEquals("     2      1.94         0          0.039               0.039  2 x 1mm sheet",
        run.out().lines().toList().get(3));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "-3 | stack: target is -3 mm (option TARGET), below the minimum of 0.05 mm. Use 0.05 mm or more.",
      "0 | stack: target is 0 mm (option TARGET), below the minimum of 0.05 mm. Use 0.05 mm or more.",
      "NaN | stack: target is \"NaN\" (option TARGET), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "1e9 | stack: target is 1.0E9 mm (option TARGET, written 1e9), above the maximum of 200 mm. "
          + "Use 200 mm or less.",
      "9in | stack: target is 228.6 mm (option TARGET, written 9in), above the maximum of 200 mm. Use 200 mm or less.",
      "--json=no | outrigger stack: Invalid value for option '--json': 'no' is not a boolean. "
          + "For help: outrigger stack --help.",
      "--block no | outrigger stack: TARGET is missing. Write it such as outrigger stack TARGET.",
      "3 4 | outrigger stack: there is nothing to do with \"4\". Options begin with two dashes; for help: "
          + "outrigger stack --help.",
      "3 --sheet 1mm | outrigger stack: there is no option --sheet. Did you mean --sheets?",
      "3 --sheets 41thou | stack: sheets is \"41thou\" (option --sheets), and no sheet of that name is on the shelf. "
          + "Did you mean 40thou or 30thou or 60thou?",
      "3 --sheets 40thou:x | stack: sheets is \"40thou:x\" (option --sheets), in which \"x\" is no count from 0 to "
          + "999. Write how many there are behind the colon, such as 40thou:3.",
      "3 --washers M4:3 | stack: washers is \"M4:3\" (option --washers), but washers of that size come in several "
          + "thicknesses, and a count must say of which. Name them, such as M4-normal:3.",
      "3 --washers M7 | stack: washers is \"M7\" (option --washers), and no washer of that size or name is on the "
          + "shelf. Did you mean M5 or M4 or M3?",
      "3 --shims thin | stack: shims is \"thin\" (option --shims), in which \"thin\" is no thickness from 0.005 to "
          + "100 mm. Write what you measured in mm, in or thou, such as 0.1, 0.98:2 or 4thou.",
      "3 --block no --sheets \"\" | stack: there is nothing to stack: no sheet, washer, shim or printed block "
          + "(sheets: option --sheets). Name what is at hand, or allow a printed block.",
      "3 --printer demo-0.25 --block-min 151 | stack: block-min is 151 mm, but printer demo-0.25 prints 150 mm high at "
          + "most (block-min: option --block-min). Lower block-min.",
      "3 --pieces 9 | stack: pieces is 9 (option --pieces), above the maximum of 8. Use 8 or less.",
      "3 --tolerance -1 | stack: tolerance is -1 mm (option --tolerance), below the minimum of 0 mm. Use 0 mm or more.",
  })
  void stack_badInput_isRefusedWhole(String options, String message) {
    Run run = stack(options);
    assertEquals(message + "\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("", run.out());
  }

  /** Each command of the page prints the block that follows it. */
  @TestFactory
  Stream<DynamicTest> page_everyCommand_printsWhatThePageShows() throws IOException {
    String[] blocks = Files.readString(PAGE).replace("\r\n", "\n").split("```");
    List<Integer> commands = Stream.iterate(1, i -> i < blocks.length, i -> i + 2)
        .filter(i -> blocks[i].startsWith("sh\n" + COMMAND)).toList();
    assertTrue(commands.size() >= 3, commands.size() + " commands found");
    return commands.stream().map(i -> DynamicTest.dynamicTest(blocks[i].substring(3).strip(), () -> {
      Run run = stack(blocks[i].substring(3 + COMMAND.length()).strip());
      assertEquals("", run.err());
      assertEquals(blocks[i + 2].replaceFirst("^text\n", ""), run.out());
    }));
  }
}
