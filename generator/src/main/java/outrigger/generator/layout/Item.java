package outrigger.generator.layout;

import java.util.List;

/**
 * A thing that must lie somewhere; mm.
 *
 * @param name what it is called, unlike any other
 * @param length along the truck as it lies lengthwise
 * @param width across the truck as it lies lengthwise
 * @param height upwards; it stands on no other side
 * @param clearance room on each of its four sides and above it, 0 or more
 * @param cables where its cables leave
 * @param cableRoom room they need there in place of the clearance where it is more, 0 or more
 * @param rooms names of the rooms it may go to; empty for all
 */
public record Item(String name, double length, double width, double height, double clearance, CableSide cables,
    double cableRoom, List<String> rooms) {
  public Item {
    rooms = List.copyOf(rooms);
    if (!(length > 0 && width > 0 && height > 0 && clearance >= 0 && cableRoom >= 0)) {
      throw new IllegalArgumentException(name + ": " + length + " x " + width + " x " + height);
    }
  }

  /** An item without cables that may go anywhere. */
  public static Item of(String name, double length, double width, double height, double clearance) {
    return new Item(name, length, width, height, clearance, CableSide.NONE, 0, List.of());
  }

  /** Room needed on one of its sides. */
  public double room(CableSide side) {
    return side == cables ? Math.max(clearance, cableRoom) : clearance;
  }

  /** What it takes of the floor along, as it lies lengthwise. */
  public double takesLength() {
    return length + room(CableSide.FRONT) + room(CableSide.REAR);
  }

  /** What it takes of the floor across, as it lies lengthwise. */
  public double takesWidth() {
    return width + room(CableSide.LEFT) + room(CableSide.RIGHT);
  }

  /** What it takes upwards. */
  public double takesHeight() {
    return height + room(CableSide.TOP);
  }

  /** Whether it may go to a room. */
  public boolean mayGoTo(Room room) {
    return rooms.isEmpty() || rooms.contains(room.name());
  }

  /** What it takes of the floor. */
  Packing.Box box() {
    return new Packing.Box(Micro.up(takesLength()), Micro.up(takesWidth()));
  }
}
