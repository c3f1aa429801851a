package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ShelfTest {
  private final Shelf shelf = Shelf.standard();

  @Test
  void tables_standard_listsEveryTableOnce() {
    assertEquals(List.of("screws", "nuts", "washers", "clearance-holes", "pilot-holes", "heat-set-inserts",
        "stock-lengths", "disc-magnets", "magnet-grades", "rails", "printers", "materials",
        "electronics", "sheet-stock"),
        shelf.tables().stream().map(TableInfo::key).toList());
  }

  @Test
  void items_everyTable_loadsAndHasASourceForEachValue() {
    for (TableInfo table : shelf.tables()) {
      List<? extends Item> items = shelf.items(table.type());
      assertFalse(items.isEmpty(), table.key());
      assertFalse(shelf.about(table.type()).isBlank(), table.key());
      for (Item item : items) {
        List<Sourced> values = shelf.sources(item);
        assertEquals(table.type().getRecordComponents().length, values.size(), item.name());
        for (Sourced value : values) {
          assertFalse(value.value().isBlank(), item.name() + " " + value.column());
          assertFalse(value.source().text().isBlank(), item.name() + " " + value.column());
          assertNotEquals(Source.Kind.USER, value.source().kind(), item.name() + " " + value.column());
        }
      }
    }
  }

  @Test
  void columns_everyTable_areTheRecordComponentsInOrder() {
    for (TableSpec<?> spec : Tables.ALL) {
      List<String> components = Arrays.stream(spec.type().getRecordComponents())
          .map(component -> component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT)).toList();
      assertEquals(components, spec.columnNames(), spec.key());
    }
  }

  @Test
  void sources_everyItem_printsWhatTheRecordHolds() throws ReflectiveOperationException {
    for (TableInfo table : shelf.tables()) {
      for (Item item : shelf.items(table.type())) {
        for (int i = 0; i < table.type().getRecordComponents().length; i++) {
          Object held = table.type().getRecordComponents()[i].getAccessor().invoke(item);
          String printed = shelf.sources(item).get(i).value();
          if (held instanceof Double number) {
            assertEquals(number, Double.parseDouble(printed), item.name());
          } else if (held instanceof List<?> numbers) {
            assertEquals(numbers, Arrays.stream(printed.split(", ")).map(Double::valueOf).toList(), item.name());
          } else {
            assertEquals(held, printed, item.name());
          }
        }
      }
    }
  }

  @Test
  void get_anyCase_findsTheItem() {
    assertEquals("6x2", shelf.get(DiscMagnet.class, "6X2").name());
    assertEquals("M3-socket", shelf.get(Screw.class, "m3-SOCKET").name());
  }

  @Test
  void get_anyCaseInTurkishLocale_findsTheItem() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      assertTrue(shelf.find(HeatSetInsert.class, "M2-MINIATURE").isPresent());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void get_missing_offersNearNames() {
    UnknownPreset unknown = assertThrows(UnknownPreset.class, () -> shelf.get(DiscMagnet.class, "7x2"));
    assertEquals("disc-magnets", unknown.table());
    assertEquals("7x2", unknown.name());
    assertEquals(List.of("6x2", "8x2", "5x2"), unknown.near());
    assertEquals(shelf.names(DiscMagnet.class), unknown.all());
    assertEquals("disc-magnets: there is no \"7x2\". Did you mean 6x2, 8x2 or 5x2? "
        + "Use a name of the table, or add a row of that name in a table file of your own.", unknown.getMessage());
  }

  @Test
  void get_nothingNear_listsTheTable() {
    UnknownPreset unknown = assertThrows(UnknownPreset.class, () -> shelf.get(ClearanceHole.class, "quarter-inch"));
    assertEquals(List.of(), unknown.near());
    assertTrue(unknown.getMessage().contains("The table has M1.6, M2, M2.5, M3, M4 and M5."), unknown.getMessage());
  }

  @Test
  void names_clearanceHoles_inFileOrder() {
    assertEquals(List.of("M1.6", "M2", "M2.5", "M3", "M4", "M5"), shelf.names(ClearanceHole.class));
  }

  @Test
  void table_mistyped_offersNearKeys() {
    assertEquals(DiscMagnet.class, shelf.table("Disc-Magnets").type());
    UnknownPreset unknown = assertThrows(UnknownPreset.class, () -> shelf.table("disk-magnets"));
    assertEquals(List.of("disc-magnets"), unknown.near());
  }
}
