package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/presets.md and docs/sources.md say is run and compared. */
class DocumentationTest {
  private static final Path DOCS = Path.of("..", "docs");

  @TempDir
  private Path folder;

  /** The text of a fenced block of docs/presets.md, counted from 0 among those of its fence. */
  private static String block(String fence, int number) throws IOException {
    List<MatchResult> blocks = Pattern.compile("```" + fence + "\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(DOCS.resolve("presets.md")).replace("\r\n", "\n")).results().toList();
    return blocks.get(number).group(1);
  }

  @Test
  void presetsPage_example_doesWhatThePageSays() throws IOException {
    Shelf shelf = Shelf.standard().with(Files.writeString(folder.resolve("drawer.toml"), block("toml", 0)));
    assertEquals(new DiscMagnet("6x2", 6, 1.95, "N42"), shelf.get(DiscMagnet.class, "6x2"));
    assertEquals(new DiscMagnet("quarter-inch", 6.35, 1.5875, "N35"), shelf.get(DiscMagnet.class, "quarter-inch"));
    assertEquals(new Rail("my-hauler", "channel", 11, 1.524, 5, 34.544), shelf.get(Rail.class, "my-hauler"));
    assertEquals(0.15, shelf.get(Printer.class, "demo-0.4").holeAllowance());
  }

  @Test
  void presetsPage_faultyExample_isRefusedAsPrinted() throws IOException {
    Path file = Files.writeString(folder.resolve("faulty.toml"), block("toml", 1));
    PresetFileException refusal = assertThrows(PresetFileException.class, () -> Shelf.standard().with(file));
    String inFolder = folder + folder.getFileSystem().getSeparator();
    assertEquals(block("text", 0).strip(), refusal.getMessage().replace(inFolder, ""));
  }

  @Test
  void presetsPage_tables_namesEveryTableAndColumn() throws IOException {
    String page = Files.readString(DOCS.resolve("presets.md"));
    for (TableSpec<?> spec : Tables.ALL) {
      String row = page.lines().filter(line -> line.startsWith("| `" + spec.key() + "` |")).findFirst().orElse("");
      int last = 0;
      for (String column : spec.columnNames().subList(1, spec.columnNames().size())) {
        int place = row.indexOf("`" + column + "`");
        assertTrue(place > last, spec.key() + " " + column);
        last = place;
      }
    }
  }

  @Test
  void sourcesPage_everySource_namesItsStandardsAndTitles() throws IOException {
    String page = Files.readString(DOCS.resolve("sources.md"));
    Pattern cited = Pattern.compile("\"[^\"]+\"|\\b(?:ISO|DIN) [0-9]+(?:-[0-9])?(?::[0-9]{4})?");
    for (TableInfo table : Shelf.standard().tables()) {
      for (Item item : Shelf.standard().items(table.type())) {
        for (Sourced value : Shelf.standard().sources(item)) {
          Matcher citation = cited.matcher(value.source().text());
          while (citation.find()) {
            assertTrue(page.contains(citation.group()), table.key() + ": " + citation.group());
          }
        }
      }
    }
  }
}
