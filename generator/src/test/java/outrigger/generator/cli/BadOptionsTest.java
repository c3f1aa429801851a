package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad input by options: exit 2, one whole message, no stack trace, nothing printed to the output, nothing written. */
class BadOptionsTest {
  @TempDir
  Path folder;

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "--width -3 | hook: width is -3 mm (option --width), below the minimum of 1 mm. Use 1 mm or more.",
      "--width=-3 | hook: width is -3 mm (option --width), below the minimum of 1 mm. Use 1 mm or more.",
      "--width 0 | hook: width is 0 mm (option --width), below the minimum of 1 mm. Use 1 mm or more.",
      "--width 1e9 | hook: width is 1.0E9 mm (option --width, written 1e9), above the maximum of 200 mm. "
          + "Use 200 mm or less.",
      "--width 10in | hook: width is 254 mm (option --width, written 10in), above the maximum of 200 mm. "
          + "Use 200 mm or less.",
      "--width NaN | hook: width is \"NaN\" (option --width), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width Infinity | hook: width is \"Infinity\" (option --width), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width 0x1p3 | hook: width is \"0x1p3\" (option --width), not a length: unknown unit \"x1p3\". "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width 3kg | hook: width is \"3kg\" (option --width), not a length: unknown unit \"kg\". "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width 3,5 | hook: width is \"3,5\" (option --width), not a length: a decimal comma is not read. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width= | hook: width is \"\" (option --width), not a length: empty. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--width wide | hook: width is \"wide\" (option --width), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--lean 61deg | hook: lean is 61 degrees (option --lean, written 61deg), above the maximum of 60 degrees. "
          + "Use 60 degrees or less.",
      "--lean 3mm | hook: lean is \"3mm\" (option --lean), not an angle: not a number. "
          + "Write an angle in degrees, such as 30 or 30deg.",
      "--screws 1.5 | hook: screws is \"1.5\" (option --screws), not a whole number. Write a count such as 1.",
      "--screws 5 | hook: screws is 5 (option --screws), above the maximum of 4. Use 4 or less.",
      "--screw M3-sokket | hook: screw is \"M3-sokket\" (option --screw), and no screw of that name is on the shelf. "
          + "Did you mean M3-socket or M2-socket or M4-socket?",
      "--side lefft | hook: side is \"lefft\" (option --side), not one of: left, right. Did you mean left?",
      "--marked perhaps | hook: marked is \"perhaps\" (option --marked), neither yes nor no. Write yes or no.",
      "--label ABCDEFGHIJKLM | hook: label is \"ABCDEFGHIJKLM\" (option --label), 13 characters long, "
          + "above the maximum of 12. Shorten it.",
      "--set 1,x | hook: set is \"x\" (option --set, written 1,x), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "--wall-thickness 9 --width 18 | hook: two walls of 9 mm leave no room in a width of 18 mm "
          + "(wall-thickness: option --wall-thickness). Lower wall-thickness or raise width.",
      "--width 4 | hook: two walls of 2 mm leave no room in a width of 4 mm (wall-thickness is at its default 2). "
          + "Lower wall-thickness or raise width.",
      "--label lost | hook: table screws has no \"M3-sockt\". Did you mean M3-socket or M2-socket or "
          + "M4-socket?",
      "--label touch | hook: parts touch only along a line here, from (10.000, 10.000, 0.000) mm to (10.000, "
          + "10.000, 10.000) mm, which no print file can say. Let them overlap by a tenth of a millimetre there, or "
          + "move them apart.",
      "--name ../x | the name \"../x\" (option --name) cannot be a file name everywhere. Use letters a to z, digits, "
          + "dashes, points between them; begin and end with a letter or digit.",
      "--name a/b | the name \"a/b\" (option --name) cannot be a file name everywhere. Use letters a to z, digits, "
          + "dashes, points between them; begin and end with a letter or digit.",
      "--name NUL | the name \"NUL\" (option --name) is reserved on some systems. Choose another name.",
      "--name= | the name \"\" (option --name) cannot be a file name everywhere. Use letters a to z, digits, "
          + "dashes, points between them; begin and end with a letter or digit.",
      "--material PLAA | material is \"PLAA\" (option --material), and no material of that name is on the shelf. "
          + "Did you mean PLA?",
      "--widht 3 | outrigger make hook: there is no option --widht. Did you mean --width?",
      "--width | outrigger make hook: --width is given without a value. Write it such as --width LENGTH.",
      "--width 3 --width 4 | outrigger make hook: --width is given twice. Leave one of them out.",
      "block | outrigger make hook: there is nothing to do with \"block\". Options begin with two dashes; for help: "
          + "outrigger make hook --help.",
      "--presets= | \"\" (--presets) cannot be a path. Give the path of a file or folder.",
      "--presets none.toml | none.toml: there is no such file. Check the path.",
  })
  void make_badOption_isRefusedWholeAndNothingIsWritten(String options, String message) throws IOException {
    String[] args = Stream.concat(Stream.of("make", "hook", "--out", folder.toString()),
        Stream.of(options.split(" "))).toArray(String[]::new);
    Run run = Run.hook(args);
    assertEquals(message + "\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("", run.out());
    assertEquals(List.of(), list(folder));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "mak | outrigger: there is no command \"mak\". Did you mean make?",
      "frobnicate | outrigger: there is no command \"frobnicate\". Known are: make, batch, hardware, plan, check, hold, stack, presets, kinds.",
      "make hok | outrigger make: there is no kind \"hok\". Did you mean hook?",
      "make | outrigger make: needs a kind. Give one of: hook. For help: outrigger make --help.",
      "batch | outrigger batch: PLAN is missing. Write it such as outrigger batch PLAN.",
      "check | outrigger check: FILE is missing. Write it such as outrigger check FILE.",
      "batch a b | outrigger batch: there is nothing to do with \"b\". Options begin with two dashes; for help: "
          + "outrigger batch --help.",
      "presets scrws | outrigger presets: there is no table \"scrws\". Did you mean screws?",
      "--jsn | outrigger: there is no option --jsn. Did you mean --json?",
      "check none.stl | none.stl: there is no such file. Check the path.",
      "batch none.toml --out= | \"\" (--out) cannot be a path. Give the path of a file or folder.",
      "batch none.toml --threads 0 | threads is 0 (option --threads), below the minimum of 1. Use 1 or more.",
      "batch none.toml --threads two | threads is \"two\" (option --threads), not a whole number. "
          + "Write a count such as 1.",
  })
  void command_badArguments_isRefusedWhole(String arguments, String message) {
    Run run = Run.hook(arguments.split(" "));
    assertEquals(message + "\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("", run.out());
  }

  @Test
  void make_severalBadOptions_tellsAll() {
    Run run = Run.hook("make", "hook", "--width", "nan", "--screws", "9", "--side", "up", "--out", folder.toString());
    assertEquals(4, run.err().lines().count());
    assertEquals("3 faults; nothing was written.", run.err().lines().toList().get(3));
  }

  @Test
  void make_outIsAFile_isRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("out"), "kept");
    Run run = Run.hook("make", "hook", "--out", file.toString());
    assertEquals("the output folder " + file + " is a file. Give a folder with --out, or move that file away.\n",
        run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("kept", Files.readString(file));
  }

  @Test
  void make_outBelowAFile_isRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("out"), "kept");
    Run run = Run.hook("make", "hook", "--out", file.resolve("deep").toString());
    assertEquals("the output folder " + file.resolve("deep") + " cannot be made, since out is a file. "
        + "Give a folder with --out, or move that file away.\n", run.err());
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertEquals("kept", Files.readString(file));
  }

  @Test
  void make_folderInPlaceOfTheFile_isRefused() throws IOException {
    Files.createDirectory(folder.resolve("hook.stl"));
    Run run = Run.hook("make", "hook", "--out", folder.toString());
    assertEquals("there is a folder named hook.stl in " + folder + ", where a file is to be written. "
        + "Move it away or give another folder with --out.\n", run.err());
    assertEquals(List.of("hook.stl"), list(folder));
  }

  @Test
  void make_defect_printsTraceAndAsksForAReport() {
    Run run = Run.hook("make", "hook", "--label", "defect", "--out", folder.toString());
    assertEquals(Exit.DEFECT, run.exit());
    assertEquals("java.lang.IllegalStateException: a defect made on purpose", run.err().lines().findFirst().get());
    assertFalse(run.err().lines().filter(line -> line.contains("Please report it")).findAny().isEmpty());
  }

  static List<String> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
