package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PresetFileTest {
  @TempDir
  private Path folder;

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("mine.toml"), text);
  }

  private Shelf with(String text) throws IOException {
    return Shelf.standard().with(write(text));
  }

  @Test
  void with_knownName_changesOnlyTheValuesGiven() throws IOException {
    Shelf shelf = with("""
        [[disc-magnets.row]]
        name = "6X2"
        thickness = 1.9
        """);
    DiscMagnet magnet = shelf.get(DiscMagnet.class, "6x2");
    assertEquals(new DiscMagnet("6x2", 6, 1.9, "N42"), magnet);
    List<Sourced> values = shelf.sources(magnet);
    assertEquals(Source.Kind.COMMON_PRACTICE, values.get(1).source().kind());
    assertEquals(new Source(Source.Kind.USER, folder.resolve("mine.toml").toString()), values.get(2).source());
    assertEquals(Shelf.standard().names(DiscMagnet.class), shelf.names(DiscMagnet.class));
  }

  @Test
  void with_newName_addsAtTheEnd() throws IOException {
    Shelf shelf = with("""
        [[disc-magnets.row]]
        name = "7x1.5"
        diameter = "7mm"
        thickness = 1.5
        grade = "N35"
        """);
    List<String> names = shelf.names(DiscMagnet.class);
    assertEquals("7x1.5", names.get(names.size() - 1));
    assertEquals(Shelf.standard().names(DiscMagnet.class).size() + 1, names.size());
  }

  @Test
  void with_anyFile_leavesTheFirstShelfAlone() throws IOException {
    with("[[rails.row]]\nname = \"plate-28\"\nspacing = 29\n");
    assertEquals(28, Shelf.standard().get(Rail.class, "plate-28").spacing());
  }

  @Test
  void with_otherTables_areSharedUnread() throws IOException {
    Shelf shelf = with("[[rails.row]]\nname = \"plate-28\"\nspacing = 29\n");
    assertSame(Shelf.standard().get(Screw.class, "M3-socket"), shelf.get(Screw.class, "M3-socket"));
  }

  @Test
  void with_twoFiles_theLaterOneWins() throws IOException {
    Shelf first = with("[[rails.row]]\nname = \"plate-28\"\nspacing = 29\nheight = 13\n");
    Shelf second = first.with(write("[[rails.row]]\nname = \"plate-28\"\nspacing = 29.5\n"));
    assertEquals(new Rail("plate-28", "plate", 13, 2, 0, 29.5), second.get(Rail.class, "plate-28"));
  }

  @Test
  void with_unitsOfTheSection_readPlainNumbersInThem() throws IOException {
    Shelf shelf = with("""
        [rails]
        units = { spacing = "in", height = "thou" }
        row = [
          { name = "plate-28", spacing = 1.5, height = 400, web = "0.1in" },
          { name = "plate-32", spacing = "38mm" },
        ]
        """);
    assertEquals(new Rail("plate-28", "plate", 10.16, 2.54, 0, 38.1), shelf.get(Rail.class, "plate-28"));
    assertEquals(38, shelf.get(Rail.class, "plate-32").spacing());
  }

  @Test
  void with_lists_readUnitsInThem() throws IOException {
    Shelf shelf = with("[[stock-lengths.row]]\nname = \"M3-socket\"\nlengths = [6, \"0.5in\", 16]\n");
    assertEquals(List.of(6.0, 12.7, 16.0), shelf.get(StockLengths.class, "M3-socket").lengths());
  }

  @Test
  void with_ownSources_columnBeatsRowAndRowBeatsTable() throws IOException {
    String file = folder.resolve("mine.toml").toString();
    Shelf shelf = with("""
        [source.callipers]
        kind = "user"
        text = "Callipers, three readings"
        [source.ruler]
        kind = "user"
        text = "Ruler"
        [source.packet]
        kind = "common-practice"
        text = "Packet"
        [disc-magnets]
        source = "ruler"
        source-of = { grade = "packet" }
        [[disc-magnets.row]]
        name = "7x2"
        source = "callipers"
        source-of = { thickness = "ruler" }
        diameter = 7
        thickness = 2
        grade = "N52"
        """);
    List<Sourced> values = shelf.sources(shelf.get(DiscMagnet.class, "7x2"));
    assertEquals("Callipers, three readings (" + file + ")", values.get(1).source().text());
    assertEquals("Ruler (" + file + ")", values.get(2).source().text());
    assertEquals(new Source(Source.Kind.COMMON_PRACTICE, "Packet (" + file + ")"), values.get(3).source());
  }

  @Test
  void with_everyShippedTable_isReadAsAUserFileToo() throws IOException {
    for (TableInfo table : Shelf.standard().tables()) {
      Path shipped = Path.of("src/main/resources/outrigger/presets", table.key() + ".toml");
      Shelf shelf = Shelf.standard().with(shipped);
      assertEquals(Shelf.standard().items(table.type()), shelf.items(table.type()), table.key());
    }
  }

  @Test
  void with_byteOrderMarkAndCarriageReturns_reads() throws IOException {
    Shelf shelf = with("\uFEFF[[rails.row]]\r\nname = \"plate-28\"\r\nspacing = 29\r\n");
    assertEquals(29, shelf.get(Rail.class, "plate-28").spacing());
  }

  @Test
  void with_about_replacesTheDescription() throws IOException {
    assertEquals("Mine", with("[rails]\nabout = \"Mine\"\n").about(Rail.class));
  }

  @Test
  void with_emptyFile_changesNothing() throws IOException {
    Shelf shelf = with("");
    assertTrue(shelf.items(Rail.class).equals(Shelf.standard().items(Rail.class)));
  }
}
