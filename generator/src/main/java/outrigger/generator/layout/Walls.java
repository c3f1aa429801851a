package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Packs a room: from its wider end where it only narrows, else all over; either way finds a way wherever there is one. */
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

  /** A way for all boxes to lie, in their order, if there is one. */
  Optional<List<Place>> lay(List<Packing.Box> boxes) {
    if (boxes.isEmpty()) {
      return Optional.of(List.of());
    }
    if (boxes.size() > Packing.MOST) {
      return Optional.empty();
    }
    if (floor(false).onlyNarrows()) {
      return from(false, boxes);
    }
    if (floor(true).onlyNarrows()) {
      return from(true, boxes);
    }
    // From the ends is quicker, where it finds a way.
    return from(false, boxes).or(() -> from(true, boxes)).or(() -> Narrows.lay(boxes, floor(false))
        .map(spots -> places(false, floor(false), boxes, spots)));
  }

  /** Whether a rectangle fits as it is turned. */
  boolean takes(long length, long width) {
    return Narrows.takes(length, width, floor(false));
  }

  /** Packs from one end on; where walls are straight, what is left over goes evenly to both ends and sides. */
  private Optional<List<Place>> from(boolean front, List<Packing.Box> boxes) {
    Floor floor = floor(front);
    return Packing.lay(boxes, floor).map(spots -> places(front, floor, boxes, spots));
  }

  /** y of the right wall at the end that packing begins from. */
  private double base(boolean front) {
    Room.Section end = room.sections().get(front ? room.sections().size() - 1 : 0);
    return front ? end.frontRight() : end.rearRight();
  }

  /** Where a section ends within a micrometre, both its walls and the next one's count over all of that. */
  private Floor floor(boolean front) {
    double base = base(front);
    List<Room.Section> ordered = new ArrayList<>(room.sections());
    if (front) {
      Collections.reverse(ordered);
    }
    List<Floor.Section> sections = new ArrayList<>();
    for (Room.Section s : ordered) {
      Floor.Section next = front
          ? section(room.front() - s.front(), room.front() - s.rear(), s.frontRight() - base, s.rearRight() - base,
              s.frontLeft() - base, s.rearLeft() - base)
          : section(s.rear() - room.rear(), s.front() - room.rear(), s.rearRight() - base, s.frontRight() - base,
              s.rearLeft() - base, s.frontLeft() - base);
      Floor.Section last = sections.isEmpty() ? next : sections.get(sections.size() - 1);
      if (!sections.isEmpty() && last.to() > next.from()) {
        sections.set(sections.size() - 1, new Floor.Section(last.from(), next.from(), last.lowFrom(), last.lowTo(),
            last.highFrom(), last.highTo()));
        long low = Math.max(last.lowTo(), next.lowFrom());
        long high = Math.min(last.highTo(), next.highFrom());
        sections.add(new Floor.Section(next.from(), last.to(), low, low, high, high));
        next = new Floor.Section(last.to(), next.to(), next.lowFrom(), next.lowTo(), next.highFrom(), next.highTo());
      }
      sections.add(next);
    }
    long end = Micro.down(room.length());
    return new Floor(sections.stream().map(s -> s.to() <= end ? s : new Floor.Section(s.from(), end, s.lowFrom(), s.lowTo(),
        s.highFrom(), s.highTo())).filter(s -> s.from() < s.to()).toList());
  }

  private static Floor.Section section(double from, double to, double lowFrom, double lowTo, double highFrom,
      double highTo) {
    return new Floor.Section(Micro.down(from), Micro.up(to), Micro.up(lowFrom), Micro.up(lowTo), Micro.down(highFrom),
        Micro.down(highTo));
  }

  private List<Place> places(boolean front, Floor floor, List<Packing.Box> boxes, List<Packing.Spot> spots) {
    long used = spots.stream().mapToLong(s -> s.x() + s.length()).max().orElse(0);
    double ahead = floor.isRectangle() ? Micro.mm(floor.along() - used) / 2 : 0;
    List<Place> places = new ArrayList<>();
    for (Packing.Spot s : spots) {
      double near = Micro.mm(s.x()) + ahead;
      double far = near + Micro.mm(s.length());
      double right = base(front) + Micro.mm(s.y()) + aside(s, spots, floor);
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
        low = Math.min(low, s.y() - floor.low(s.x(), s.x() + s.length()));
        high = Math.min(high, floor.high(s.x(), s.x() + s.length()) - s.y() - s.width());
      }
    }
    return Micro.mm(high - low) / 2;
  }
}
