package outrigger.generator.truck;

import java.util.List;
import outrigger.generator.layout.CableSide;
import outrigger.generator.layout.Item;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/** Table {@code [[item]]}: a thing the truck carries, in a tray or between the rails. */
public record ItemParams(
    @Param(max = 40, def = "item", help = "What it is called, unlike any other item, such as battery.")
    String name,
    @Param(min = 0.1, max = 1000, def = "30", help = "Length, along the truck as it lies lengthwise.")
    double length,
    @Param(min = 0.1, max = 1000, def = "20", help = "Width, across the truck as it lies lengthwise.")
    double width,
    @Param(min = 0.1, max = 500, def = "10", help = "Height; it is laid on no other side.")
    double height,
    @Param(unit = Unit.GRAMS, max = 5000, def = "0", help = "Its mass.")
    double mass,
    @Param(max = 50, def = "1", help = "Room on each of its four sides and above it.")
    double clearance,
    @Param(def = "none", help = "Side on which its cables leave as it lies lengthwise: front, rear, left, right or top; "
        + "it turns with the item.")
    CableSide cableSide,
    @Param(max = 100, def = "5", help = "Room for the cables on that side, in place of the clearance where it is more.")
    double cableRoom,
    @Param(max = 100, def = "", help = "Where it may go: names of trays that carry no items of their own, and "
        + "between-rails; none for anywhere.")
    List<String> rooms) {

  public ItemParams {
    rooms = List.copyOf(rooms);
  }

  /** What is laid out. */
  public Item item() {
    return new Item(name, length, width, height, clearance, cableSide, cableRoom, rooms);
  }
}
