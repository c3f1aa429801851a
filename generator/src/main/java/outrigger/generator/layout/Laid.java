package outrigger.generator.layout;

/**
 * An item in its place; mm.
 *
 * @param x of its middle
 * @param y of its middle
 * @param crosswise whether its length lies across
 * @param cables the way its cables leave as it lies
 * @param free room to the nearest wall or item on each side, and above
 */
public record Laid(Item item, Room room, double x, double y, boolean crosswise, CableSide cables, Free free) {

  /** Free room round an item, mm. */
  public record Free(double front, double rear, double left, double right, double above) {}

  /** How long it is along the truck as it lies. */
  public double length() {
    return crosswise ? item.width() : item.length();
  }

  /** How wide it is across the truck as it lies. */
  public double width() {
    return crosswise ? item.length() : item.width();
  }

  /** Room it asks for on a side as it lies. */
  public double asks(CableSide side) {
    return side == cables ? Math.max(item.clearance(), item.cableRoom()) : item.clearance();
  }

  /** The same with other free room. */
  Laid with(Free other) {
    return new Laid(item, room, x, y, crosswise, cables, other);
  }
}
