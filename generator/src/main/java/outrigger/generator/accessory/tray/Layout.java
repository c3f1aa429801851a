package outrigger.generator.accessory.tray;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.accessory.Words;
import outrigger.generator.joint.Block;
import outrigger.generator.layout.Packing;
import outrigger.generator.param.BadDimension;

/**
 * Where the items of a tray lie.
 *
 * @param places one for each item, in the order they were given
 */
record Layout(List<Place> places) {
  private static final double PER_MM = 1000;
  /** Least distance that notes tell, mm: half of their last figure. */
  private static final double SEEN = 0.0005;

  Layout {
    places = List.copyOf(places);
  }

  /**
   * An item in its place: its middle, in the tray's axes, mm.
   *
   * @param crosswise whether its length lies across the tray
   */
  record Place(TrayItem item, double x, double y, boolean crosswise) {}

  /**
   * Lays the items out on the clear floor.
   *
   * @throws BadDimension naming the item that does not fit, the axis and by how much
   */
  static Layout of(List<TrayItem> items, ClearFloor floor) {
    requireNames(items);
    for (TrayItem item : items) {
      requireHeight(item, floor);
      requireFloor(item, floor);
    }
    List<Packing.Box> boxes = items.stream().map(Layout::box).toList();
    List<Packing.Spot> spots = Packing.lay(boxes, units(floor.length()), units(floor.width()))
        .orElseThrow(() -> crowded(items, boxes, floor));
    return new Layout(centred(items, spots, floor));
  }

  private static void requireNames(List<TrayItem> items) {
    Set<String> names = new HashSet<>();
    for (TrayItem item : items) {
      if (!names.add(item.name())) {
        throw new BadDimension("items", "two items are called " + item.name(), "Give each its own name.");
      }
    }
    if (items.size() > Packing.MOST) {
      throw new BadDimension("items", items.size() + " items are more than the " + Packing.MOST
          + " that can be laid out in one tray", "Make two trays.");
    }
  }

  private static void requireHeight(TrayItem item, ClearFloor floor) {
    double over = item.height() + item.clearance() - floor.height();
    if (over > 1e-9) {
      throw new BadDimension("items", item.name() + " is " + Words.mm(over) + " too high: with "
          + Words.mm(item.clearance()) + " above it, it needs " + Words.mm(item.height() + item.clearance())
          + ", and there is " + Words.mm(floor.height()) + " from the floor up", "Raise drop or headroom.");
    }
  }

  /** Refuses an item that would not fit even alone, by what it lacks the better way round. */
  private static void requireFloor(TrayItem item, ClearFloor floor) {
    double length = item.length() + 2 * item.clearance();
    double width = item.width() + 2 * item.clearance();
    Lack along = Lack.of(length, width, floor);
    Lack crosswise = Lack.of(width, length, floor);
    Lack least = crosswise.total() < along.total() ? crosswise : along;
    if (least.total() > 0) {
      throw new BadDimension("items", item.name() + " is " + least.words() + (least == crosswise
          ? " even crosswise" : "") + ": with " + Words.mm(item.clearance()) + " clearance on each side it takes "
          + Words.number(length) + " x " + Words.mm(width) + ", and the clear floor is " + floor.words(),
          least.advice());
    }
  }

  /** What an item lacks on each axis, 0 where it fits. */
  private record Lack(double length, double width) {
    static Lack of(double along, double across, ClearFloor floor) {
      return new Lack(Math.max(0, units(along) - units(floor.length())) / PER_MM,
          Math.max(0, units(across) - units(floor.width())) / PER_MM);
    }

    double total() {
      return length + width;
    }

    String words() {
      String one = Words.mm(length) + " too long";
      String other = Words.mm(width) + " too wide";
      return length > 0 && width > 0 ? one + " and " + other : length > 0 ? one : other;
    }

    String advice() {
      return length > 0 ? "Lengthen the tray, or carry it in another."
          : "Widen the tray (fewer straps and thinner tabs leave more room), or carry it in another.";
    }
  }

  private static Packing.Box box(TrayItem item) {
    return new Packing.Box(units(item.length() + 2 * item.clearance()), units(item.width() + 2 * item.clearance()));
  }

  private static long units(double mm) {
    return Math.round(mm * PER_MM);
  }

  /** The refusal of items that fit one by one but not all together. */
  private static BadDimension crowded(List<TrayItem> items, List<Packing.Box> boxes, ClearFloor floor) {
    List<String> out = leftOver(items, boxes, floor);
    Optional<Long> longer = Packing.leastLength(boxes, units(floor.width()));
    List<Packing.Box> turned = boxes.stream().map(b -> new Packing.Box(b.width(), b.length())).toList();
    Optional<Long> wider = Packing.leastLength(turned, units(floor.length()));
    List<String> needs = new ArrayList<>();
    longer.ifPresent(l -> needs.add(Words.mm((l - units(floor.length())) / PER_MM) + " more length"));
    wider.ifPresent(w -> needs.add(Words.mm((w - units(floor.width())) / PER_MM) + " more width"));
    return new BadDimension("items", String.join(" and ", out) + (out.size() == 1 ? " does" : " do")
        + " not fit beside the others on the clear floor of " + floor.words() + "; all together need "
        + String.join(" or ", needs), "Enlarge the tray by that much, or carry " + String.join(" and ", out)
            + " in another.");
  }

  /** Names of what stays out when as many items as can, and of those the largest, are laid. */
  private static List<String> leftOver(List<TrayItem> items, List<Packing.Box> boxes, ClearFloor floor) {
    int best = 0;
    for (int set = 1; set < 1 << items.size(); set++) {
      boolean more = Integer.bitCount(set) > Integer.bitCount(best)
          || Integer.bitCount(set) == Integer.bitCount(best) && area(boxes, set) > area(boxes, best);
      if (more && Packing.lay(chosen(boxes, set), units(floor.length()), units(floor.width())).isPresent()) {
        best = set;
      }
    }
    int in = best;
    return chosen(items, ~in & (1 << items.size()) - 1).stream().map(TrayItem::name).toList();
  }

  private static long area(List<Packing.Box> boxes, int set) {
    return chosen(boxes, set).stream().mapToLong(b -> b.length() * b.width()).sum();
  }

  private static <T> List<T> chosen(List<T> all, int set) {
    List<T> some = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if ((set >> i & 1) == 1) {
        some.add(all.get(i));
      }
    }
    return some;
  }

  /** Spreads the play that is left evenly round the whole layout. */
  private static List<Place> centred(List<TrayItem> items, List<Packing.Spot> spots, ClearFloor floor) {
    long usedX = spots.stream().mapToLong(s -> s.x() + s.length()).max().orElse(0);
    long usedY = spots.stream().mapToLong(s -> s.y() + s.width()).max().orElse(0);
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      int number = i;
      Packing.Spot spot = spots.stream().filter(s -> s.box() == number).findFirst().orElseThrow();
      double x = floor.x() + (spot.x() + spot.length() / 2.0 - usedX / 2.0) / PER_MM;
      double y = floor.y() + (spot.y() + spot.width() / 2.0 - usedY / 2.0) / PER_MM;
      places.add(new Place(items.get(i), x, y, spot.length() != box(items.get(i)).length()));
    }
    return places;
  }

  /**
   * The items as boxes on a floor.
   *
   * @param roomy whether with the room each asks for
   */
  List<Block> blocks(double floor, boolean roomy) {
    return places.stream().map(p -> Block.on(p.item.name(), new Block.Corner(p.x, p.y, floor),
        p.crosswise ? p.item.width() : p.item.length(), p.crosswise ? p.item.length() : p.item.width(), p.item.height())
        .larger(roomy ? p.item.clearance() : 0)).toList();
  }

  /** One sentence for each item. */
  List<String> notes() {
    return places.stream().map(p -> p.item.name() + " lies " + (p.crosswise ? "crosswise" : "lengthwise")
        + ", " + where(p) + ".").toList();
  }

  private static String where(Place place) {
    List<String> ways = new ArrayList<>();
    ways.addAll(way(place.x, "ahead of", "behind"));
    ways.addAll(way(place.y, "left of", "right of"));
    return ways.isEmpty() ? "in the middle of the tray" : "its middle " + String.join(" and ", ways) + " the tray's";
  }

  private static List<String> way(double value, String positive, String negative) {
    return Math.abs(value) < SEEN ? List.of()
        : List.of(Words.mm(Math.abs(value)) + " " + (value < 0 ? negative : positive));
  }
}
