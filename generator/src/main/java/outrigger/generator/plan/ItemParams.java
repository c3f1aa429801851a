package outrigger.generator.plan;

import java.util.List;
import outrigger.generator.layout.CableSide;
import outrigger.generator.layout.Item;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;

/** A table {@code [[item]]} of a plan: a thing that must lie in a tray or between the rails. */
public record ItemParams(
    @Param(max = 60, def = "", help = "What it is called, unlike any other item.")
    String name,

    @Param(min = 0.1, max = 500, def = "30", help = "Length, along the truck as it lies lengthwise.")
    double length,

    @Param(min = 0.1, max = 500, def = "20", help = "Width, across the truck as it lies lengthwise.")
    double width,

    @Param(min = 0.1, max = 500, def = "10", help = "Height; it is not laid on another side.")
    double height,

    @Param(max = 50, def = "1", help = "Room on each of its four sides and above it.")
    double clearance,

    @Param(def = "none", help = "Side on which its cables leave as it lies lengthwise (front, rear, left, right or top); "
        + "it turns with the item.")
    CableSide cableSide,

    @Param(max = 100, def = "5", help = "Room for the cables on that side, in place of the clearance.")
    double cableRoom,

    @Param(max = 100, def = "", help = "Where it may go: names of trays that carry no items of their own, or between-rails; "
        + "none for anywhere.")
    List<String> rooms) {

  /** @throws BadDimension where it has no name */
  public ItemParams {
    rooms = List.copyOf(rooms);
    if (name.isBlank()) {
      throw new BadDimension("name", "an item has no name", "Add name = \"...\".");
    }
  }

  Item item() {
    return new Item(name, length, width, height, clearance, cableSide, cableRoom, rooms);
  }
}
