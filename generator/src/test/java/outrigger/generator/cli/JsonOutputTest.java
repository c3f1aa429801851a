package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonOutputTest {
  @TempDir
  Path folder;

  /** Reads the whole text as exactly one JSON object, and returns its first two members. */
  private static String head(String text) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      assertEquals(JsonToken.START_OBJECT, parser.nextToken());
      parser.nextToken();
      String ok = parser.getText() + "=" + parser.nextToken();
      parser.nextToken();
      parser.nextToken();
      String head = ok + " exit=" + parser.getText();
      int depth = 1;
      while (depth > 0) {
        JsonToken token = parser.nextToken();
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
      }
      assertEquals(null, parser.nextToken(), "one object only");
      return head;
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "make hook --out OUT | ok=VALUE_TRUE exit=0",
      "make hook --set 1,2 --out OUT | ok=VALUE_TRUE exit=0",
      "presets | ok=VALUE_TRUE exit=0",
      "presets screws --sources | ok=VALUE_TRUE exit=0",
      "kinds | ok=VALUE_TRUE exit=0",
      "--help | ok=VALUE_TRUE exit=0",
      "make hook --help | ok=VALUE_TRUE exit=0",
      "--version | ok=VALUE_TRUE exit=0",
      "check none.stl | ok=VALUE_FALSE exit=2",
      "make hook --width nan --screws 9 --out OUT | ok=VALUE_FALSE exit=2",
      "make hook --widht 3 --out OUT | ok=VALUE_FALSE exit=2",
      "make hook --width | ok=VALUE_FALSE exit=2",
      "make hok | ok=VALUE_FALSE exit=2",
      "batch | ok=VALUE_FALSE exit=2",
      "batch none.toml --out OUT | ok=VALUE_FALSE exit=2",
      "presets scrws | ok=VALUE_FALSE exit=2",
      "make hook --presets none.toml | ok=VALUE_FALSE exit=2",
      "make hook --label defect --out OUT | ok=VALUE_FALSE exit=1",
  })
  void json_everyCommand_isOneObject(String arguments, String expected) throws IOException {
    String[] words = ("--json " + arguments.replace("OUT", folder.toString())).split(" ");
    Run run = Run.hook(words);
    assertEquals(expected, head(run.out()));
    assertEquals("", run.err());
    assertEquals(expected.charAt(expected.length() - 1) - '0', run.exit());
  }

  @Test
  void json_afterTheCommand_isTheSame() {
    assertEquals(Run.hook("--json", "kinds"), Run.hook("kinds", "--json"));
  }

  @Test
  void json_fault_carriesItsParts() {
    Run run = Run.hook("make", "hook", "--width", "500", "--json", "--out", folder.toString());
    assertEquals("""
        {
          "ok" : false,
          "exit" : 2,
          "faults" : [
            {
              "message" : "hook: width is 500 mm (option --width), above the maximum of 200 mm. Use 200 mm or less.",
              "subject" : "hook",
              "parameter" : "width",
              "what" : "width is 500 mm (option --width), above the maximum of 200 mm",
              "value" : "500",
              "limit" : "at most 200 mm",
              "advice" : "Use 200 mm or less.",
              "option" : "--width"
            }
          ]
        }
        """, run.out());
  }

  @Test
  void json_planFault_carriesFileLineAndColumn() throws IOException {
    Path plan = Files.writeString(folder.resolve("p.toml"), "[[part]]\nkind = \"hook\"\n  width = 500\n");
    Run run = Run.hook("batch", plan.toString(), "--json", "--out", folder.resolve("out").toString());
    assertTrue(run.out().contains("\"file\" : \"p.toml\",\n      \"line\" : 3,\n      \"column\" : 3"), run.out());
  }

  @Test
  void json_check_soundAndNot_tellsFindings() throws IOException {
    Run.hook("make", "hook", "--out", folder.toString());
    byte[] bytes = Files.readAllBytes(folder.resolve("hook.stl"));
    byte[] less = Arrays.copyOf(bytes, bytes.length - 50);
    less[80]--;
    Path open = Files.write(folder.resolve("open.stl"), less);
    Run run = Run.hook("check", open.toString(), "--json");
    assertEquals("ok=VALUE_FALSE exit=3", head(run.out()));
    assertTrue(run.out().contains("\"rule\" : \"open-edge\",\n          \"count\" : 3"), run.out());
  }

  @Test
  void json_textBeyondAscii_isEscaped() throws IOException {
    Run run = Run.hook("make", "hook", "--width", "\u00fc\u20ac", "--json", "--out", folder.toString());
    assertTrue(run.out().contains("\\u00FC\\u20AC"), run.out());
    assertTrue(run.out().chars().allMatch(c -> c < 128));
    head(run.out());
  }
}
