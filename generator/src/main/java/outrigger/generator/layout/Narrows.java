package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays rectangles on a floor that closes in and parts again, exactly: it finds a way wherever there is one.
 *
 * <p>Of two rectangles one lies before the other or beside it. Where all of that is settled, and for each rectangle which
 * way round it lies and in which {@link Bay}, the best places follow (see {@link Knot}); only two that both want the room
 * between them leave a choice, which is halved until it is made. So rectangles are added one by one, the largest first; of
 * two that lie over each other where they are tried all four orders are tried, and then, where one is tried in a wall, its
 * bays. Lengths are whole micrometres.
 */
final class Narrows {
  /**
   * A box the way round it lies.
   *
   * @param number of the box
   * @param bays where it may lie, from the first end on
   * @param length along the floor
   * @param width across the floor
   */
  record Turned(int number, List<Bay> bays, long length, long width) {
    /** The right wall where it comes in most along it. */
    long low(long x) {
      return bays.get(0).low(x);
    }

    /** The left wall where it comes in most along it. */
    long high(long x) {
      return bays.get(0).high(x);
    }
  }

  private final List<Packing.Box> boxes;
  private final List<Integer> largestFirst;
  private final List<List<Turned>> ways = new ArrayList<>();

  private Narrows(List<Packing.Box> boxes, Floor floor, boolean turns) {
    this.boxes = List.copyOf(boxes);
    // Equal boxes come one after the other.
    this.largestFirst = IntStream.range(0, boxes.size()).boxed().sorted(Comparator
        .comparingLong((Integer i) -> -boxes.get(i).length() * boxes.get(i).width())
        .thenComparingLong(i -> boxes.get(i).length()).thenComparingInt(i -> i)).toList();
    for (int i : largestFirst) {
      Packing.Box box = boxes.get(i);
      List<Turned> all = new ArrayList<>(List.of(new Turned(i, Bay.of(floor, box.length()), box.length(), box.width())));
      if (turns && box.length() != box.width()) {
        all.add(new Turned(i, Bay.of(floor, box.width()), box.width(), box.length()));
      }
      all.removeIf(way -> Knot.none().with(way).isEmpty());
      ways.add(all);
    }
  }

  /** A way to lay all boxes on a floor, in their order, if there is one. */
  static Optional<List<Packing.Spot>> lay(List<Packing.Box> boxes, Floor floor) {
    // What does not go into a rectangle round the floor is not looked for further.
    return Packing.lay(boxes, floor.along(), floor.widest()).isEmpty() ? Optional.empty()
        : new Narrows(boxes, floor, true).search(Knot.none(), 0);
  }

  /** Whether a rectangle fits as it is turned. */
  static boolean takes(long length, long width, Floor floor) {
    return new Narrows(List.of(new Packing.Box(length, width)), floor, false).search(Knot.none(), 0).isPresent();
  }

  /** @param last the way the box added last lies, a number among its ways */
  private Optional<List<Packing.Spot>> search(Knot knot, int last) {
    for (int i = 0; i < knot.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!knot.isOrdered(i, j) && isOver(knot, i, j)) {
          return first(orders(knot, j, i), last);
        }
      }
    }
    if (knot.size() < boxes.size()) {
      return add(knot, last);
    }
    if (IntStream.range(0, knot.size()).allMatch(knot::isClear)) {
      return Optional.of(spots(knot));
    }
    return first(unsettled(knot).map(i -> bays(knot, i)).orElseGet(() -> halves(knot)), last);
  }

  private static Optional<Integer> unsettled(Knot knot) {
    return IntStream.range(0, knot.size()).filter(i -> !knot.isSettled(i)).boxed().findFirst();
  }

  private static boolean isOver(Knot knot, int i, int j) {
    return knot.x(i) < knot.x(j) + knot.length(j) && knot.x(j) < knot.x(i) + knot.length(i)
        && knot.y(i) < knot.y(j) + knot.width(j) && knot.y(j) < knot.y(i) + knot.width(i);
  }

  /** Of two equal boxes that lie alike the one added first comes first: changed about, nothing else changes. */
  private List<Optional<Knot>> orders(Knot knot, int i, int j) {
    List<Optional<Knot>> orders = new ArrayList<>(List.of(knot.before(i, j), knot.beside(i, j)));
    boolean isAlike = boxes.get(knot.box(i).number()).equals(boxes.get(knot.box(j).number()))
        && knot.length(i) == knot.length(j);
    if (!isAlike) {
      orders.add(knot.before(j, i));
      orders.add(knot.beside(j, i));
    }
    return orders;
  }

  /** A box in its first bay, and behind it. */
  private static List<Optional<Knot>> bays(Knot knot, int i) {
    return List.of(knot.within(i, knot.from(i), knot.bay(i).to()), knot.within(i, knot.bay(i).to() + 1, knot.to(i)));
  }

  /**
   * Both halves of where two boxes may part of which the nearer wants to lie further on and the further nearer; where there
   * are none, of where a box may begin whose walls do not agree.
   */
  private static List<Optional<Knot>> halves(Knot knot) {
    for (int i = 0; i < knot.size(); i++) {
      for (int j = 0; j < knot.size(); j++) {
        long end = knot.x(i) + knot.length(i);
        if (knot.isBefore(i, j) && knot.bay(j).isLowRising() && end > knot.from(j) && knot.x(i) > knot.from(i)) {
          long middle = Math.floorDiv(knot.from(j) + end, 2);
          return List.of(knot.within(i, knot.from(i), middle - knot.length(i)), knot.within(j, middle + 1, knot.to(j)));
        }
      }
    }
    int i = IntStream.range(0, knot.size()).filter(k -> knot.bay(k).isSkew() && knot.from(k) < knot.to(k)).findFirst()
        .orElseThrow();
    long middle = Math.floorDiv(knot.from(i) + knot.to(i), 2);
    return List.of(knot.within(i, knot.from(i), middle), knot.within(i, middle + 1, knot.to(i)));
  }

  private Optional<List<Packing.Spot>> first(List<Optional<Knot>> knots, int last) {
    for (Optional<Knot> knot : knots) {
      Optional<List<Packing.Spot>> found = knot.flatMap(k -> search(k, last));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<List<Packing.Spot>> add(Knot knot, int last) {
    int next = knot.size();
    boolean isSame = next > 0 && boxes.get(largestFirst.get(next)).equals(boxes.get(largestFirst.get(next - 1)));
    for (int way = isSame ? last : 0; way < ways.get(next).size(); way++) {
      int chosen = way;
      Optional<List<Packing.Spot>> found = knot.with(ways.get(next).get(way)).flatMap(more -> search(more, chosen));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static List<Packing.Spot> spots(Knot knot) {
    return IntStream.range(0, knot.size()).mapToObj(i -> new Packing.Spot(knot.box(i).number(), knot.x(i), knot.y(i),
        knot.length(i), knot.width(i))).sorted(Comparator.comparingInt(Packing.Spot::box)).toList();
  }
}
