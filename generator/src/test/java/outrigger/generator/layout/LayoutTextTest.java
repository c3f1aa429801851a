package outrigger.generator.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayoutTextTest {
  private static final Room TRAY = Room.rectangle("tray", 100, 0, 60, 30, 20);

  @Test
  void lines_laid_tellPlaceFreeRoomAndCables() {
    Item item = new Item("controller", 30, 20, 8, 1, CableSide.REAR, 10, List.of());
    assertEquals(List.of("controller lies in tray lengthwise, its middle at x 104.5, y 0 mm; free 10.5 ahead, 19.5 behind, "
        + "5 left, 5 right, 12 mm above; cables leave rearward, 10 mm kept for them", "controller alone in tray: fits"),
        LayoutText.lines(Arranger.arrange(List.of(item), List.of(TRAY))));
  }

  /** Lengthwise 40 + 30 is 10 too long, and 40 + 28 crosswise 8; both crosswise 28 + 28 go into 60, but are 40 wide. */
  @Test
  void lines_crowded_tellHowMuchIsMissing() {
    Arrangement two = Arranger.arrange(List.of(Item.of("a", 40, 28, 8, 0), Item.of("b", 30, 28, 8, 0)), List.of(TRAY));
    assertEquals("b takes 30 x 28 x 8 mm with the room round it and finds no place: tray (60 long, 30 wide, 20 high) "
        + "takes it alone, but beside what lies there would "
        + "have to be 8 mm longer or 10 mm wider", LayoutText.out(two.out().get(0)));
    Arrangement none = Arranger.arrange(List.of(Item.of("c", 70, 31, 22, 0)), List.of(TRAY));
    assertEquals("c takes 70 x 31 x 22 mm with the room round it and finds no place: tray (60 long, 30 wide, 20 high) is "
        + "too small even when empty: 10 mm too long and 1 mm too wide and 2 mm too high",
        LayoutText.out(none.out().get(0)));
    Item nowhere = new Item("d", 1, 1, 1, 0, CableSide.NONE, 0, List.of("attic"));
    assertEquals("d finds no place: there is no room it may go to",
        LayoutText.out(Arranger.arrange(List.of(nowhere), List.of(TRAY)).out().get(0)));
  }
}
