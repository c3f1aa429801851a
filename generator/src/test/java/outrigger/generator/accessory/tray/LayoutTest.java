package outrigger.generator.accessory.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Shelf;

/** Items on a clear floor of 70 x 30, 20 high. */
class LayoutTest {
  private static final ClearFloor FLOOR = new ClearFloor(0, 0, 70, 30, 20);

  private static List<TrayItem> items(String texts) {
    return Arrays.stream(texts.split(",")).map(t -> TrayItem.parse(t, Shelf.standard())).toList();
  }

  private static BadDimension refusal(String texts) {
    return assertThrows(BadDimension.class, () -> Layout.of(items(texts), FLOOR));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "battery:70x30x20", "battery:30x70x20", "a:40x30x10,b:30x30x10", "a:40x30x10,b:15x30x5,c:30x15x5",
      "battery:68x28x19+1", "a:35x15x1,b:35x15x1,c:35x15x1,d:35x15x1"})
  void of_whatFitsExactly_isLaidOut(String texts) {
    Layout layout = Layout.of(items(texts), FLOOR);
    assertEquals(items(texts), layout.places().stream().map(Layout.Place::item).toList());
    for (Layout.Place p : layout.places()) {
      double along = (p.crosswise() ? p.item().width() : p.item().length()) / 2 + p.item().clearance();
      double across = (p.crosswise() ? p.item().length() : p.item().width()) / 2 + p.item().clearance();
      assertTrue(Math.abs(p.x()) + along <= 35 + 1e-9 && Math.abs(p.y()) + across <= 15 + 1e-9, p.toString());
    }
  }

  /** A tenth too much on any axis is said to be a tenth too much on that axis. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "battery:70.1x30x20 | battery is 0.1 mm too long",
      "battery:70x30.1x20 | battery is 0.1 mm too wide",
      "battery:70x30x20.1 | battery is 0.1 mm too high",
      "battery:70x28x10+1 | battery is 2 mm too long",
      "battery:68x28.1x19+1 | battery is 0.1 mm too wide",
      "battery:30.1x70x20 | battery is 0.1 mm too wide even crosswise",
      "battery:71x32x10 | battery is 1 mm too long and 2 mm too wide",
      "a:40x30x10,b:30.1x30x10 | b does not fit beside the others on the clear floor of 70 x 30 mm; all together need "
          + "0.1 mm more length or 0.1 mm more width",
      "a:70x15x10,b:70x15.1x10 | a does not fit beside the others on the clear floor of 70 x 30 mm; all together need "
          + "70 mm more length or 0.1 mm more width"})
  void of_whatDoesNotFit_saysWhichAndByHowMuch(String texts, String words) {
    BadDimension refusal = refusal(texts);
    assertEquals("items", refusal.parameter());
    assertTrue(refusal.what().contains(words), refusal.getMessage());
  }

  @Test
  void of_manyLeftOver_namesThem() {
    BadDimension refusal = refusal("a:40x30x1,b:40x30x1,c:40x30x1");
    assertTrue(refusal.what().contains("b and c do not fit beside the others"), refusal.getMessage());
  }

  @Test
  void of_sameNameOrTooMany_isRefused() {
    assertTrue(refusal("a:4x3x1,a:4x3x1").what().contains("two items are called a"));
    assertTrue(refusal("a:1x1x1,b:1x1x1,c:1x1x1,d:1x1x1,e:1x1x1,f:1x1x1,g:1x1x1").what().contains("7 items"));
  }

  @Test
  void notes_twoItems_sayWhereTheyLie() {
    // 45 + 20 of 70 are used: 2.5 are left at each end.
    assertEquals(List.of("a lies lengthwise, its middle 10 mm behind the tray's.",
        "b lies crosswise, its middle 22.5 mm ahead of the tray's."),
        Layout.of(items("a:45x30x5,b:30x20x5"), FLOOR).notes());
  }
}
