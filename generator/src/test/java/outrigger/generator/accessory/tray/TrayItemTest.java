package outrigger.generator.accessory.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.param.BadDimension;
import outrigger.presets.ElectronicsItem;
import outrigger.presets.Shelf;

class TrayItemTest {
  private static TrayItem parse(String text) {
    return TrayItem.parse(text, Shelf.standard());
  }

  @Test
  void parse_sizes_takesEveryUnit() {
    assertEquals(new TrayItem("battery", 60, 30, 16, 0), parse("battery:60x30x16"));
    assertEquals(new TrayItem("speed controller", 25.4, 12.7, 10, 1.016),
        parse(" speed controller : 1in x0.5inX10mm+40thou"));
  }

  @Test
  void parse_presetName_takesItsSizes() {
    ElectronicsItem receiver = Shelf.standard().get(ElectronicsItem.class, "receiver");
    assertEquals(new TrayItem("receiver", receiver.length(), receiver.width(), receiver.height(),
        receiver.clearance()), parse("receiver"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "battry | nor an electronics preset",
      "battery:60x30 | no NAME:LxWxH",
      "battery:60x30x16x2 | no NAME:LxWxH",
      ":60x30x16 | no NAME:LxWxH",
      "../x:60x30x16 | no NAME:LxWxH",
      "battery:60x-30x16 | \"-30\" is no length",
      "battery:60x0x16 | \"0\" is no length",
      "battery:60xNaNx16 | \"NaN\" is no length",
      "battery:60x30cmx16 | \"30cm\" is no length",
      "battery:60x30x1e9 | \"1e9\" is no length",
      "battery:60x30x16+ | \"\" is no length",
      "battery:60x30x16+-1 | \"-1\" is no length"})
  void parse_other_isRefused(String text, String words) {
    BadDimension refusal = assertThrows(BadDimension.class, () -> parse(text));
    assertTrue(refusal.what().contains(words), refusal.getMessage());
  }
}
