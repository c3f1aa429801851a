package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Packs a room: from its front, from its rear, and, where it narrows and widens again, zone by zone.
 *
 * <p>Where a room only narrows or only widens, all ways to lie are looked at. Across a waist, things are laid on the strip
 * that goes straight through it.
 */
final class Walls {
  /**
   * A rectangle as it lies; mm, room included.
   *
   * @param number of the box
   * @param crosswise whether its length lies across
   */
  record Place(int number, double rear, double front, double right, double left, boolean crosswise) {}

  private final Room room;

  Walls(Room room) {
    this.room = room;
  }

  /** A way for all boxes to lie, in their order, if one is found. */
  Optional<List<Place>> lay(List<Packing.Box> boxes) {
    if (boxes.isEmpty()) {
      return Optional.of(List.of());
    }
    if (boxes.size() > Packing.MOST) {
      return Optional.empty();
    }
    Optional<List<Place>> whole = from(room, false, boxes).or(() -> from(room, true, boxes));
    List<Room> zones = room.zones();
    return whole.isPresent() || zones.size() == 1 ? whole : inZones(zones, boxes);
  }

  /** Whether a rectangle fits as it is turned. */
  boolean takes(long length, long width) {
    List<Room> zones = room.zones();
    return takes(room, length, width) || zones.size() > 1 && zones.stream().anyMatch(z -> takes(z, length, width));
  }

  private static boolean takes(Room room, long length, long width) {
    Floor rear = floor(room, false, base(room, false));
    Floor front = floor(room, true, base(room, true));
    return length <= rear.along() && (rear.high(length) - rear.low(length) >= width
        || front.high(length) - front.low(length) >= width);
  }

  private static Optional<List<Place>> inZones(List<Room> zones, List<Packing.Box> boxes) {
    if (zones.size() == 1) {
      return new Walls(zones.get(0)).lay(boxes);
    }
    for (int set = 0; set < 1 << boxes.size(); set++) {
      List<Integer> here = numbers(set, boxes.size());
      List<Integer> there = numbers(~set, boxes.size());
      Optional<List<Place>> first = new Walls(zones.get(0)).lay(here.stream().map(boxes::get).toList());
      Optional<List<Place>> rest = first.isEmpty() ? Optional.empty()
          : inZones(zones.subList(1, zones.size()), there.stream().map(boxes::get).toList());
      if (rest.isPresent()) {
        List<Place> all = new ArrayList<>(renumbered(first.get(), here));
        all.addAll(renumbered(rest.get(), there));
        all.sort(Comparator.comparingInt(Place::number));
        return Optional.of(all);
      }
    }
    return Optional.empty();
  }

  private static List<Integer> numbers(int set, int count) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if ((set >> i & 1) == 1) {
        numbers.add(i);
      }
    }
    return numbers;
  }

  private static List<Place> renumbered(List<Place> places, List<Integer> numbers) {
    return places.stream().map(p -> new Place(numbers.get(p.number), p.rear, p.front, p.right, p.left, p.crosswise))
        .toList();
  }

  /** Packs from one end on; where walls are straight, what is left over goes evenly to both ends and sides. */
  private static Optional<List<Place>> from(Room room, boolean front, List<Packing.Box> boxes) {
    double base = base(room, front);
    Floor floor = floor(room, front, base);
    return Packing.lay(boxes, floor).map(spots -> places(room, front, base, floor, boxes, spots));
  }

  /** y of the right wall at the end that packing begins from. */
  private static double base(Room room, boolean front) {
    Room.Section end = room.sections().get(front ? room.sections().size() - 1 : 0);
    return front ? end.frontRight() : end.rearRight();
  }

  private static Floor floor(Room room, boolean front, double base) {
    List<Floor.Section> sections = new ArrayList<>();
    for (Room.Section s : room.sections()) {
      sections.add(front
          ? section(room.front() - s.front(), room.front() - s.rear(), s.frontRight() - base, s.rearRight() - base,
              s.frontLeft() - base, s.rearLeft() - base)
          : section(s.rear() - room.rear(), s.front() - room.rear(), s.rearRight() - base, s.frontRight() - base,
              s.rearLeft() - base, s.frontLeft() - base));
    }
    if (front) {
      Collections.reverse(sections);
    }
    return new Floor(sections.stream().filter(s -> s.from() < s.to()).collect(Collectors.toList()));
  }

  private static Floor.Section section(double from, double to, double lowFrom, double lowTo, double highFrom,
      double highTo) {
    return new Floor.Section(Micro.down(from), Micro.down(to), Micro.up(lowFrom), Micro.up(lowTo), Micro.down(highFrom),
        Micro.down(highTo));
  }

  private static List<Place> places(Room room, boolean front, double base, Floor floor, List<Packing.Box> boxes,
      List<Packing.Spot> spots) {
    long used = spots.stream().mapToLong(s -> s.x() + s.length()).max().orElse(0);
    double ahead = floor.isRectangle() ? Micro.mm(floor.along() - used) / 2 : 0;
    List<Place> places = new ArrayList<>();
    for (Packing.Spot s : spots) {
      double near = Micro.mm(s.x()) + ahead;
      double far = near + Micro.mm(s.length());
      double right = base + Micro.mm(s.y()) + aside(s, spots, floor);
      places.add(new Place(s.box(), front ? room.front() - far : room.rear() + near,
          front ? room.front() - near : room.rear() + far, right, right + Micro.mm(s.width()),
          s.length() != boxes.get(s.box()).length()));
    }
    places.sort(Comparator.comparingInt(Place::number));
    return places;
  }

  /** How far to the left things go that lie beside each other, so that both walls are equally far. */
  private static double aside(Packing.Spot one, List<Packing.Spot> spots, Floor floor) {
    long from = one.x();
    long to = one.x() + one.length();
    for (boolean grown = true; grown;) {
      grown = false;
      for (Packing.Spot s : spots) {
        if (s.x() < to && s.x() + s.length() > from && (s.x() < from || s.x() + s.length() > to)) {
          from = Math.min(from, s.x());
          to = Math.max(to, s.x() + s.length());
          grown = true;
        }
      }
    }
    long low = Long.MAX_VALUE;
    long high = Long.MAX_VALUE;
    for (Packing.Spot s : spots) {
      if (s.x() < to && s.x() + s.length() > from) {
        low = Math.min(low, s.y() - floor.low(s.x() + s.length()));
        high = Math.min(high, floor.high(s.x() + s.length()) - s.y() - s.width());
      }
    }
    return Micro.mm(high - low) / 2;
  }
}
