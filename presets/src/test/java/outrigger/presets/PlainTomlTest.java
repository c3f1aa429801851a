package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** The reader of the program's own tables against a full parser of TOML 1.0. */
class PlainTomlTest {

  private static void assertSame(TomlTable full, TomlTable plain, String where) {
    assertEquals(full.keySet(), plain.keySet(), where);
    for (String key : full.keySet()) {
      List<String> path = List.of(key);
      assertEquals(full.inputPositionOf(path), plain.inputPositionOf(path), where + " " + key);
      assertSame(full.get(path), plain.get(path), where + " " + key);
    }
  }

  private static void assertSame(Object full, Object plain, String where) {
    if (full instanceof TomlTable table) {
      assertSame(table, (TomlTable) plain, where);
    } else if (full instanceof TomlArray list) {
      assertEquals(list.size(), ((TomlArray) plain).size(), where);
      for (int i = 0; i < list.size(); i++) {
        assertEquals(list.inputPositionOf(i), ((TomlArray) plain).inputPositionOf(i), where + " " + i);
        assertSame(list.get(i), ((TomlArray) plain).get(i), where + " " + i);
      }
    } else {
      assertEquals(full, plain, where);
    }
  }

  @Test
  void read_everyTableOfTheProgram_isWhatTheFullParserReads() {
    for (TableSpec<?> spec : Tables.ALL) {
      String text = StandardTables.text(spec.key() + ".toml");
      assertSame(Toml.parse(text), PlainToml.read(text), spec.key());
    }
  }

  @Test
  void read_allItKnows_isWhatTheFullParserReads() {
    String text = "# first\n[a.b]\nx = -1 # one\n y = 0.50\nz = \"a \\\"b\\\" \\\\\"\n\n[c]\nt = true\n"
        + "l = [1, 2,\n  3, # three\n]\ni = { p = 1, q = { r = [] } }\n";
    assertSame(Toml.parse(text), PlainToml.read(text), "all");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a = ", "a = 01", "a = 1e3", "a = \"x", "a = \"\\n\"", "a = [1", "a = {b = 1", "[a", "a = 1\na = 2",
      "a = 'x'", "a = 2020-01-01", "a.b = 1", "a = 1\n[a]", "\"a\" = 1", "a = +1", "a = \"x\ny\""})
  void read_anythingElse_isRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> PlainToml.read(text));
  }
}
