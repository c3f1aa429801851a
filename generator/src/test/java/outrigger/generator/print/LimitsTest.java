package outrigger.generator.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import outrigger.presets.Material;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;

class LimitsTest {
  private static final Shelf SHELF = Shelf.standard();

  private static PrintLimits of(String printer, Map<Limit, Double> wishes) {
    return Limits.of(SHELF.get(Printer.class, printer), SHELF.find(Material.class, "PETG"), wishes);
  }

  @Test
  void of_printerAndMaterial_takesTheirRows() {
    PrintLimits limits = of("demo-0.6", Map.of());
    assertEquals(1.3, limits.of(Limit.WALL));
    assertEquals(0.65, limits.of(Limit.LEAST_WALL));
    assertEquals(0.3, limits.of(Limit.LAYER));
    assertEquals(0.6, limits.of(Limit.FLOOR));
    assertEquals(300, limits.of(Limit.BED_X));
    assertEquals(1.27, limits.of(Limit.DENSITY));
  }

  @Test
  void of_wish_comesBeforeThePrinter() {
    PrintLimits limits = of("demo-0.4", Map.of(Limit.OVERHANG, 55.0, Limit.EXTRUSION_WIDTH, 0.5, Limit.GAP, 0.3,
        Limit.LAYER, 0.1));
    assertEquals(55, limits.of(Limit.OVERHANG));
    assertEquals(0.5, limits.of(Limit.LEAST_WALL));
    assertEquals(0.3, limits.of(Limit.GAP));
    assertEquals(0.2, limits.of(Limit.FLOOR));
  }

  @Test
  void standard_isTheDemoPrinterInPla() {
    assertEquals(PrintLimits.standard(), Limits.of(SHELF.get(Printer.class, "demo-0.4"),
        SHELF.find(Material.class, "PLA"), Map.of()));
    assertEquals(PrintLimits.standard(), Limits.of(SHELF.get(Printer.class, "demo-0.4"), Optional.empty(), Map.of()));
  }

  @Test
  void page_listsEveryLimitAsItIs() throws IOException {
    String page = Files.readString(Path.of("").toAbsolutePath().getParent().resolve("docs/printability.md"));
    for (Limit limit : Limit.values()) {
      String value = BigDecimal.valueOf(limit.standard()).stripTrailingZeros().toPlainString();
      String row = "| `" + limit.key() + "` | " + value + " " + limit.unit() + " | " + limit.standing() + " |";
      assertTrue(page.contains(row), row);
    }
  }
}
