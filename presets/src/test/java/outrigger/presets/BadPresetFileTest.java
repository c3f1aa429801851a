package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BadPresetFileTest {
  private static final String MAGNET = "[[disc-magnets.row]]\nname = \"6x2\"\n";

  @TempDir
  private Path folder;

  private PresetFileException refusal(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("bad.toml"), bytes);
    return assertThrows(PresetFileException.class, () -> Shelf.standard().with(file));
  }

  private PresetFileException refusal(String text) throws IOException {
    return refusal(text.getBytes(StandardCharsets.UTF_8));
  }

  static Stream<Arguments> oneFault() {
    return Stream.of(
        Arguments.of("[disk-magnets]\n", 1, 1, "there is no table \"disk-magnets\". Did you mean disc-magnets?"),
        Arguments.of("\n  x = 1979-05-27\n", 2, 3, "there is no table \"x\""),
        Arguments.of("disc-magnets = 3\n", 1, 1, "disc-magnets is 3. Write it as a table"),
        Arguments.of("source = 3\n", 1, 1, "source is 3"),
        Arguments.of("[disc-magnets]\nrwo = []\n", 2, 1, "unknown key \"rwo\". Did you mean row?"),
        Arguments.of("[disc-magnets]\nrow = 3\n", 2, 1, "row is 3. Write each row under [[disc-magnets.row]]"),
        Arguments.of("[disc-magnets]\nrow = [{ name = \"6x2\" }, 1]\n", 2, 26, "row 2 is 1"),
        Arguments.of("[disc-magnets]\nabout = 1\n", 2, 1, "about is 1"),
        Arguments.of(MAGNET + "diametre = 6\n", 3, 1, "unknown column \"diametre\". Did you mean diameter?"),
        Arguments.of(MAGNET + "diameter = \"six\"\n", 3, 1, "diameter is \"six\": not a number"),
        Arguments.of(MAGNET + "diameter = \"3d\"\n", 3, 1, "unknown unit \"d\"; use mm, in or thou"),
        Arguments.of(MAGNET + "diameter = \"0,5in\"\n", 3, 1, "a decimal comma is not read"),
        Arguments.of(MAGNET + "diameter = \"NaN\"\n", 3, 1, "not a number"),
        Arguments.of(MAGNET + "diameter = \"1e400\"\n", 3, 1, "too large a number"),
        Arguments.of(MAGNET + "diameter = -6\n", 3, 1, "diameter is -6 mm. Give a length above 0 up to 1024 mm"),
        Arguments.of(MAGNET + "diameter = 0\n", 3, 1, "diameter is 0 mm."),
        Arguments.of(MAGNET + "diameter = nan\n", 3, 1, "diameter is NaN mm."),
        Arguments.of(MAGNET + "diameter = inf\n", 3, 1, "diameter is Infinity mm."),
        Arguments.of(MAGNET + "diameter = -inf\n", 3, 1, "diameter is -Infinity mm."),
        Arguments.of(MAGNET + "diameter = 1025\n", 3, 1, "diameter is 1025 mm."),
        Arguments.of(MAGNET + "diameter = \"50in\"\n", 3, 1, "diameter is 1270 mm."),
        Arguments.of(MAGNET + "diameter = 1e400\n", 3, 12, "not TOML here: Float is too large"),
        Arguments.of(MAGNET + "diameter = 1e-400\n", 3, 12, "not TOML here: Float is too small"),
        Arguments.of(MAGNET + "diameter = 99999999999999999999\n", 3, 12, "not TOML here: Integer is too large"),
        Arguments.of(MAGNET + "diameter = true\n", 3, 1, "diameter is true."),
        Arguments.of(MAGNET + "diameter = [6]\n", 3, 1, "diameter is a list."),
        Arguments.of(MAGNET + "diameter = {}\n", 3, 1, "diameter is a table."),
        Arguments.of(MAGNET + "diameter = 6\ndiameter = 7\n", 4, 1, "diameter previously defined at line 3"),
        Arguments.of(MAGNET + "grade = 7\n", 3, 1, "grade is 7. Give a text in quotes"),
        Arguments.of(MAGNET + "grade = \" \"\n", 3, 1, "grade is the text \" \"."),
        Arguments.of("[[disc-magnets.row]]\nname = \"../x\"\n", 2, 1, "name is the text \"../x\""),
        Arguments.of("[[disc-magnets.row]]\nname = \"a\\u0000b\"\n", 2, 1, "name is the text \"a?b\""),
        Arguments.of("[[disc-magnets.row]]\nname = 6\n", 2, 1, "name is 6."),
        Arguments.of("[[disc-magnets.row]]\ndiameter = 6\n", 1, 1, "name is missing"),
        Arguments.of("[[disc-magnets.row]]\nname = \"6x22\"\ndiameter = 6\n", 1, 1,
            "thickness and grade are missing. Did you mean 6x2"),
        Arguments.of(MAGNET + MAGNET.replace("6x2", "6X2"), 3, 1, "this row stands already in line 1"),
        Arguments.of("[[disc-magnets.row]\n", 1, 19, "not TOML here"),
        Arguments.of("[disc-magnets\n", 1, 14, "not TOML here"),
        Arguments.of("[rails]\nunits = { spacing = \"cm\" }\n", 2, 11, "is \"cm\". Use mm, in or thou"),
        Arguments.of("[rails]\nunits = { form = \"mm\" }\n", 2, 11, "It has no unit; leave it out"),
        Arguments.of("[materials]\nunits = { density = \"kg/m3\" }\n", 2, 11, "Use g/cm3"),
        Arguments.of("[rails]\nunits = { spcing = \"mm\" }\n", 2, 11, "Did you mean spacing?"),
        Arguments.of("[rails]\nsource = \"y\"\n", 2, 1, "unknown source \"y\""),
        Arguments.of("[rails]\nsource-of = { spcing = \"y\" }\n[source.y]\nkind = \"user\"\ntext = \"t\"\n", 2, 15,
            "unknown column \"spcing\""),
        Arguments.of("[source.x]\nkind = \"user\"\n", 1, 1, "text is missing"),
        Arguments.of("[source.x]\nkind = \"usr\"\ntext = \"t\"\n", 2, 1, "kind is \"usr\". Did you mean user?"),
        Arguments.of("[source.x]\nkind = \"user\"\ntext = \"t\"\nyear = 1\n", 4, 1, "unknown key \"year\""),
        Arguments.of("[[rails.row]]\nname = \"plate-28\"\nform = \"chanel\"\n", 3, 1, "Did you mean channel?"),
        Arguments.of("[[rails.row]]\nname = \"plate-28\"\nflange = 3\n", 1, 1, "but a plate has none"),
        Arguments.of("[[rails.row]]\nname = \"channel-30\"\nflange = 1\n", 1, 1, "web (1.5) must be below flange (1)"),
        Arguments.of("[[washers.row]]\nname = \"M3-normal\"\nhole = 8\n", 1, 1,
            "hole (8) must be below outside (7). Lower hole or raise outside"),
        Arguments.of("[[clearance-holes.row]]\nname = \"M3\"\nfine = 4\n", 1, 1,
            "fine (4) must not be above medium (3.4)"),
        Arguments.of("[[printers.row]]\nname = \"demo-0.4\"\nlayer = 0.5\n", 1, 1,
            "layer (0.5) must not be above nozzle (0.4)"),
        Arguments.of("[[printers.row]]\nname = \"demo-0.4\"\noverhang = 90\n", 3, 1, "overhang is 90 degree."),
        Arguments.of("[[printers.row]]\nname = \"demo-0.4\"\noverhang = \"45\"\n", 3, 1,
            "overhang is the text \"45\"."),
        Arguments.of("[[stock-lengths.row]]\nname = \"M3-socket\"\nlengths = []\n", 3, 1, "lengths is an empty list."),
        Arguments.of("[[stock-lengths.row]]\nname = \"M3-socket\"\nlengths = [8, 6]\n", 3, 1, "rising order at 6"),
        Arguments.of("[[stock-lengths.row]]\nname = \"M3-socket\"\nlengths = [6, -8]\n", 3, 1, "lengths 2 is -8 mm."),
        Arguments.of("[[stock-lengths.row]]\nname = \"M3-socket\"\nlengths = 6\n", 3, 1, "lengths is 6."));
  }

  @ParameterizedTest
  @MethodSource("oneFault")
  void with_oneFault_tellsItWithItsPlace(String text, int line, int column, String part) throws IOException {
    PresetFileException refusal = refusal(text);
    assertEquals(1, refusal.faults().size(), refusal.getMessage());
    PresetFileException.Fault fault = refusal.faults().get(0);
    assertTrue(fault.text().contains(part), fault.text());
    assertEquals(List.of(line, column), List.of(fault.line(), fault.column()), fault.text());
  }

  @Test
  void with_manyFaults_tellsAllInOrder() throws IOException {
    PresetFileException refusal = refusal("""
        [[disc-magnets.row]]
        name = "6x2"
        diameter = -6
        weight = 3
        [[rails.row]]
        name = "plate-28"
        spacing = "1ft"
        [bolts]
        """);
    assertEquals(List.of(3, 4, 7, 8), refusal.faults().stream().map(PresetFileException.Fault::line).toList());
    assertTrue(refusal.getMessage().startsWith(folder.resolve("bad.toml") + ", line 3, column 1: disc-magnets \"6x2\": "
        + "diameter is -6 mm. Give a length above 0 up to 1024 mm"), refusal.getMessage());
    assertEquals(4, refusal.getMessage().lines().count());
  }

  @Test
  void with_faultyValueInKnownRow_isNotAlsoBlamedOnTheOldValue() throws IOException {
    PresetFileException refusal = refusal("[[washers.row]]\nname = \"M3-normal\"\nhole = 8\noutside = \"x\"\n");
    assertEquals(1, refusal.faults().size(), refusal.getMessage());
  }

  @Test
  void with_missingFile_saysso() {
    Path file = folder.resolve("none.toml");
    PresetFileException refusal = assertThrows(PresetFileException.class, () -> Shelf.standard().with(file));
    assertEquals(file + ": there is no such file. Check the path.", refusal.getMessage());
    assertEquals(0, refusal.faults().get(0).line());
  }

  @Test
  void with_directory_saysso() {
    PresetFileException refusal = assertThrows(PresetFileException.class, () -> Shelf.standard().with(folder));
    assertTrue(refusal.getMessage().contains("this is a directory"), refusal.getMessage());
  }

  @Test
  void with_notUtf8_givesThePlace() throws IOException {
    PresetFileException refusal = refusal("# a\n# Gr\u00f6\u00dfe\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(2, refusal.faults().get(0).line());
    assertEquals(5, refusal.faults().get(0).column());
    assertTrue(refusal.getMessage().contains("not UTF-8"), refusal.getMessage());
  }

  @Test
  void with_cutUtf8AtTheEnd_isRefused() throws IOException {
    byte[] whole = "# \u00f6".getBytes(StandardCharsets.UTF_8);
    assertTrue(refusal(java.util.Arrays.copyOf(whole, whole.length - 1)).getMessage().contains("not UTF-8"));
  }

  @Test
  void with_tooLargeFile_isRefused() throws IOException {
    assertTrue(refusal(new byte[FileText.LARGEST + 1]).getMessage().contains("larger than 1 MiB"));
  }

  @Test
  void with_deepNesting_isRefused() throws IOException {
    String message = refusal("a = \"\\\"[[\" # [[\n\nx = " + "[".repeat(100_000)).getMessage();
    assertTrue(message.contains("line 3, column 1: lists or tables are nested too deeply"), message);
  }

  @Test
  void with_brokenEscape_isRefused() throws IOException {
    assertTrue(refusal("x = \"a\\\n").getMessage().startsWith(folder.resolve("bad.toml").toString()));
  }

  @Test
  void with_controlBytes_isRefused() throws IOException {
    assertTrue(refusal(new byte[] {0, 1, 2}).getMessage().contains("not TOML here"));
  }

  @Test
  void with_longValue_isShortenedInTheMessage() throws IOException {
    PresetFileException refusal = refusal(MAGNET + "diameter = \"" + "x".repeat(5000) + "\"\n");
    assertTrue(refusal.getMessage().length() < 400, refusal.getMessage());
  }
}
