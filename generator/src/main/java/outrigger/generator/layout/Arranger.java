package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shares items out over rooms: as many as can be, of those ways one in the fewest rooms, and of those one in rooms named
 * first. Every way to share is looked at; what a room takes together is asked of {@link Walls}.
 */
public final class Arranger {
  /** Most items it takes: there are three ways to the power of their number to share them out over two rooms. */
  public static final int MOST_ITEMS = 10;
  private static final Comparator<Share> BEST = Comparator.comparingInt(Share::laid).reversed()
      .thenComparingInt(Share::rooms).thenComparingInt(Share::late);

  private final List<Item> items;
  private final List<Room> rooms;
  private final Map<List<Integer>, Optional<List<Walls.Place>>> known = new HashMap<>();

  /**
   * A way to share.
   *
   * @param sets items of each room so far, a bit for each
   * @param late number of its room over all items laid
   */
  private record Share(List<Integer> sets, int laid, int rooms, int late) {}

  private Arranger(List<Item> items, List<Room> rooms) {
    if (items.size() > MOST_ITEMS) {
      throw new IllegalArgumentException(items.size() + " items");
    }
    this.items = List.copyOf(items);
    this.rooms = List.copyOf(rooms);
  }

  /** Lays items out. */
  public static Arrangement arrange(List<Item> items, List<Room> rooms) {
    return new Arranger(items, rooms).run();
  }

  private Arrangement run() {
    Map<Integer, Share> shares = new HashMap<>(Map.of(0, new Share(List.of(), 0, 0, 0)));
    for (int room = 0; room < rooms.size(); room++) {
      Map<Integer, Share> next = new HashMap<>();
      for (Map.Entry<Integer, Share> e : shares.entrySet()) {
        int left = ~e.getKey() & (1 << items.size()) - 1;
        for (int set = left; ; set = set - 1 & left) {
          if (places(room, set).isPresent()) {
            Share share = with(e.getValue(), room, set);
            next.merge(e.getKey() | set, share, (a, b) -> BEST.compare(b, a) < 0 ? b : a);
          }
          if (set == 0) {
            break;
          }
        }
      }
      shares = next;
    }
    Share best = shares.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).min(BEST)
        .orElseThrow();
    return arrangement(best);
  }

  private static Share with(Share share, int room, int set) {
    List<Integer> sets = new ArrayList<>(share.sets());
    sets.add(set);
    int count = Integer.bitCount(set);
    return new Share(sets, share.laid() + count, share.rooms() + (set == 0 ? 0 : 1), share.late() + room * count);
  }

  /** How a set of items lies in a room, if it does; a set is not tried where it fails without one of its items. */
  private Optional<List<Walls.Place>> places(int room, int set) {
    List<Integer> key = List.of(room, set);
    Optional<List<Walls.Place>> found = known.get(key);
    if (found == null) {
      found = set == 0 ? Optional.of(List.of()) : packed(room, set);
      known.put(key, found);
    }
    return found;
  }

  private Optional<List<Walls.Place>> packed(int room, int set) {
    List<Item> chosen = chosen(set);
    if (chosen.size() > Packing.MOST || chosen.stream().anyMatch(item -> !item.mayGoTo(rooms.get(room))
        || lackOfHeight(item, rooms.get(room)) > 0)) {
      return Optional.empty();
    }
    for (int bits = set; bits != 0 && chosen.size() > 1; bits &= bits - 1) {
      if (places(room, set & ~Integer.lowestOneBit(bits)).isEmpty()) {
        return Optional.empty();
      }
    }
    return new Walls(rooms.get(room)).lay(chosen.stream().map(Item::box).toList());
  }

  private List<Item> chosen(int set) {
    List<Item> chosen = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      if ((set >> i & 1) == 1) {
        chosen.add(items.get(i));
      }
    }
    return chosen;
  }

  private Arrangement arrangement(Share share) {
    List<Laid> laid = new ArrayList<>();
    int all = 0;
    for (int room = 0; room < rooms.size(); room++) {
      int set = share.sets().get(room);
      all |= set;
      laid.addAll(LaidItems.of(chosen(set), rooms.get(room), places(room, set).orElseThrow()));
    }
    laid.sort(Comparator.comparingInt(l -> items.indexOf(l.item())));
    List<LeftOut> out = new ArrayList<>();
    for (Item item : chosen(~all & (1 << items.size()) - 1)) {
      List<LeftOut.Want> wants = new ArrayList<>();
      for (int room = 0; room < rooms.size(); room++) {
        if (item.mayGoTo(rooms.get(room))) {
          wants.add(want(item, rooms.get(room), chosen(share.sets().get(room))));
        }
      }
      out.add(new LeftOut(item, wants));
    }
    List<Fit> fits = new ArrayList<>();
    items.forEach(item -> rooms.stream().filter(item::mayGoTo)
        .forEach(room -> fits.add(new Fit(item, room, lack(item, room)))));
    return new Arrangement(laid, out, fits);
  }

  private static LeftOut.Want want(Item item, Room room, List<Item> beside) {
    Lack alone = lack(item, room);
    if (!alone.isNone()) {
      return new LeftOut.Want(room, alone, 0, 0);
    }
    List<Packing.Box> boxes = new ArrayList<>(beside.stream().map(Item::box).toList());
    boxes.add(item.box());
    if (boxes.size() > Packing.MOST) {
      return new LeftOut.Want(room, alone, 0, 0);
    }
    double most = boxes.stream().mapToDouble(box -> Micro.mm(Math.max(box.length(), box.width()))).sum();
    return new LeftOut.Want(room, alone, least(most, mm -> new Walls(room.larger(mm, 0)).lay(boxes).isPresent()),
        least(most, mm -> new Walls(room.larger(0, mm)).lay(boxes).isPresent()));
  }

  /** How much a room lacks for an item alone, the way round that lacks least. */
  static Lack lack(Item item, Room room) {
    double height = lackOfHeight(item, room);
    Packing.Box box = item.box();
    if (new Walls(room).lay(List.of(box)).isPresent()) {
      return new Lack(0, 0, height);
    }
    Lack along = lack(box.length(), box.width(), room, height);
    Lack across = lack(box.width(), box.length(), room, height);
    return across.length() + across.width() < along.length() + along.width() ? across : along;
  }

  /** First as much longer as the item is than the room, then as much wider as it must be for it to lie. */
  private static Lack lack(long length, long width, Room room, double height) {
    double longer = Math.max(0, Micro.mm(length - Micro.down(room.length())));
    Room enough = room.larger(longer, 0);
    double wider = least(Micro.mm(width), mm -> new Walls(enough.larger(0, mm)).takes(length, width));
    return new Lack(longer, wider, height);
  }

  private static double lackOfHeight(Item item, Room room) {
    return Math.max(0, Micro.mm(Micro.up(item.takesHeight()) - Micro.down(room.height())));
  }

  /** A question of a length that is answered yes from some length on. */
  private interface Question {
    boolean isEnough(double mm);
  }

  /** The least length, in micrometres, that is enough. */
  private static double least(double most, Question question) {
    if (question.isEnough(0)) {
      return 0;
    }
    long low = 0;
    long high = Micro.up(most) + 2;
    while (high - low > 1) {
      long middle = (low + high) >>> 1;
      if (question.isEnough(Micro.mm(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Micro.mm(high);
  }
}
