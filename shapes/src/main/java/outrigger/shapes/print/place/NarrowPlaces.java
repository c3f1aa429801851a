package outrigger.shapes.print.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import outrigger.shapes.num.DisjointSets;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.spot.Spot;

/**
 * Puts narrow spots together into places: two belong to one place if the middles of their balls lie within a link of
 * each other, or a chain of such spots joins them. Both faces of a wall share their middles and are one place.
 *
 * <p>Spots are put in cells so small that all in one cell are linked; cells near each other are joined at the first
 * pair within the link. Which spots belong together hangs on distances alone, not on where cells begin.
 */
public final class NarrowPlaces {
  /** Cells this far apart along an axis may still hold linked spots. */
  private static final int NEAR = 2;
  private static final int SIDE = 2 * NEAR + 1;
  /** Room for 21 bits of cell number along each axis. */
  private static final int BITS = 21;
  /** Part of the link that still joins the middles along one pin. */
  private static final double PINS = 0.75;
  /** A corner where the ball is smaller than this part is a tip. */
  private static final double TIP = 0.25;
  /** Walls that differ by less are even, mm: far below what a printer can hold. */
  private static final double EVEN = 2e-3;

  private final double link;
  private final double cell;
  private final LongMap numbers;
  private final List<List<Spot>> cells = new ArrayList<>();
  private final List<long[]> where = new ArrayList<>();
  private DisjointSets together = new DisjointSets(0);

  private NarrowPlaces(double link, int spots) {
    this.link = link;
    numbers = new LongMap(spots);
    cell = link / Math.sqrt(3);
  }

  /**
   * The places, narrowest first.
   *
   * @param rims spots that are not narrow, but stand for some narrow surface beside those that are
   * @param least smaller areas without an inner edge are dropped, mm^2: a few facets that rounding has tilted are no wall
   */
  public static List<NarrowPlace> of(List<Spot> spots, List<Spot> rims, double link, double least, Descent descent) {
    List<NarrowPlace> found = new ArrayList<>();
    joined(spots, link).grouped(rims, least, descent).forEach(place -> found.addAll(pins(place, link, least, descent)));
    found.replaceAll(place -> place.form() == NarrowPlace.Form.STRIP && descent.isOpen(place) ? place.throughout() : place);
    found.sort(Comparator.comparing(NarrowPlace::narrowest, Spot.ORDER));
    return found;
  }

  /** The same place, its narrowest spot one of its samples: what a descent may have come to lies beyond them. */
  public static NarrowPlace asSampled(NarrowPlace place) {
    return NarrowPlace.of(central(place.spots()), place.spots(), place.rim());
  }

  /** Pins side by side, nearer than the link, are told one by one: the middles of each keep to its axis. */
  private static List<NarrowPlace> pins(NarrowPlace place, double link, double least, Descent descent) {
    if (place.form() != NarrowPlace.Form.LUMP && place.form() != NarrowPlace.Form.STRIP) {
      return List.of(place);
    }
    NarrowPlaces closer = joined(place.spots(), PINS * link);
    if (closer.isOne()) {
      return List.of(place);
    }
    // asked before any descent, for most parts of what is no row of pins are none
    if (!closer.groups().values().stream().allMatch(group -> isSmall(group, least) || new SpotSpread(group).isAllRound())) {
      return List.of(place);
    }
    List<NarrowPlace> parts = closer.grouped(place.rim(), least, descent);
    boolean allRound = parts.stream().allMatch(part -> part.form() == NarrowPlace.Form.ROUND);
    return parts.size() > 1 && allRound ? parts : List.of(place);
  }

  private static NarrowPlaces joined(List<Spot> spots, double link) {
    NarrowPlaces places = new NarrowPlaces(link, spots.size());
    spots.forEach(places::put);
    places.join();
    return places;
  }

  /** Whether all spots hang together. */
  private boolean isOne() {
    for (int c = 0; c < cells.size(); c++) {
      if (together.find(c) != together.find(0)) {
        return false;
      }
    }
    return true;
  }

  private List<NarrowPlace> grouped(List<Spot> rims, double least, Descent descent) {
    Map<Integer, List<Spot>> rimsOf = besideGroups(rims);
    List<NarrowPlace> found = new ArrayList<>();
    LongMap byNarrowest = new LongMap(cells.size());
    groups().forEach((root, group) -> {
      if (!isSmall(group, least)) {
        add(found, byNarrowest, narrowest(group, descent), group, rimsOf.getOrDefault(root, List.of()));
      }
    });
    found.removeIf(Objects::isNull);
    return found;
  }

  /** Whether a group is dropped: a few facets that rounding has tilted are no wall. */
  private static boolean isSmall(List<Spot> group, double least) {
    return SpotSpread.area(group) < least && group.stream().noneMatch(Spot::isEdge);
  }

  /**
   * Adds a place, or joins it to one whose narrowest spot is linked to its own: what lies round one tip is one place.
   *
   * @param found the places so far; null where one was joined to a later one
   * @param byNarrowest their numbers by the cells of their narrowest spots, of which no two share one: they would be linked
   */
  private void add(List<NarrowPlace> found, LongMap byNarrowest, Spot narrowest, List<Spot> group, List<Spot> rim) {
    List<Spot> all = new ArrayList<>(group);
    List<Spot> rims = new ArrayList<>(rim);
    Spot least = narrowest;
    Vec middle = narrowest.ball().middle();
    int[] near = near(byNarrowest, middle);
    Arrays.sort(near);
    for (int i = near.length - 1; i >= 0; i--) {
      NarrowPlace other = found.get(near[i]);
      if (other != null && other.narrowest().ball().middle().distance(middle) <= link) {
        all.addAll(0, other.spots());
        rims.addAll(0, other.rim());
        least = other.narrowest().isBefore(least) ? other.narrowest() : least;
        found.set(near[i], null);
      }
    }
    long[] at = cell(least.ball().middle());
    byNarrowest.put(key(at[0], at[1], at[2]), found.size());
    found.add(NarrowPlace.of(least, all, rims));
  }

  private void put(Spot spot) {
    long[] at = cell(spot.ball().middle());
    long key = key(at[0], at[1], at[2]);
    int number = numbers.get(key);
    if (number < 0) {
      number = cells.size();
      numbers.put(key, number);
      cells.add(new ArrayList<>());
      where.add(at);
    }
    cells.get(number).add(spot);
  }

  private long[] cell(Vec place) {
    return new long[] {index(place.x()), index(place.y()), index(place.z())};
  }

  private long index(double c) {
    return (long) Math.floor(c / cell) + (1L << BITS - 1);
  }

  private static long key(long i, long j, long k) {
    return (i << BITS | j) << BITS | k;
  }

  private void join() {
    together = new DisjointSets(cells.size());
    for (int c = 0; c < cells.size(); c++) {
      long[] at = where.get(c);
      // half of the cells about it: of each pair one finds the other
      for (int near = 0; near < (SIDE * SIDE * SIDE) / 2; near++) {
        int other = numbers.get(key(at[0] + near / (SIDE * SIDE) - NEAR, at[1] + near / SIDE % SIDE - NEAR,
            at[2] + near % SIDE - NEAR));
        if (other >= 0 && together.find(c) != together.find(other) && isLinked(cells.get(c), cells.get(other))) {
          together.join(c, other);
        }
      }
    }
  }

  private boolean isLinked(List<Spot> a, List<Spot> b) {
    for (Spot s : a) {
      Vec middle = s.ball().middle();
      for (Spot t : b) {
        if (middle.distance(t.ball().middle()) <= link) {
          return true;
        }
      }
    }
    return false;
  }

  /** Spots by the first group they are linked to; those beside none are dropped. */
  private Map<Integer, List<Spot>> besideGroups(List<Spot> spots) {
    Map<Integer, List<Spot>> beside = new HashMap<>();
    for (Spot spot : spots) {
      int cell = cellBeside(spot);
      if (cell >= 0) {
        beside.computeIfAbsent(together.find(cell), root -> new ArrayList<>()).add(spot);
      }
    }
    return beside;
  }

  private int cellBeside(Spot spot) {
    for (int cell : near(numbers, spot.ball().middle())) {
      if (isLinked(List.of(spot), cells.get(cell))) {
        return cell;
      }
    }
    return -1;
  }

  /** What is told of the cells about a place in which something linked to it may lie. */
  private int[] near(LongMap told, Vec place) {
    long[] at = cell(place);
    int[] near = new int[SIDE * SIDE * SIDE];
    int count = 0;
    for (long i = at[0] - NEAR; i <= at[0] + NEAR; i++) {
      for (long j = at[1] - NEAR; j <= at[1] + NEAR; j++) {
        for (long k = at[2] - NEAR; k <= at[2] + NEAR; k++) {
          int number = told.get(key(i, j, k));
          if (number >= 0) {
            near[count++] = number;
          }
        }
      }
    }
    return Arrays.copyOf(near, count);
  }

  private Map<Integer, List<Spot>> groups() {
    Map<Integer, List<Spot>> groups = new LinkedHashMap<>();
    for (int c = 0; c < cells.size(); c++) {
      groups.computeIfAbsent(together.find(c), r -> new ArrayList<>()).addAll(cells.get(c));
    }
    return groups;
  }

  /** What a descent comes to from the narrowest spot between two facets, or the narrowest of all. */
  private static Spot narrowest(List<Spot> group, Descent descent) {
    Spot least = central(group);
    List<Spot> facing = group.stream().filter(s -> s.ball().grip() == BallProbe.Grip.FACING).toList();
    Spot lower = facing.isEmpty() ? descent.fromRolled(least) : descent.from(central(facing));
    Spot lowest = lower.width() < least.width() ? lower : least;
    return descent.toCorner(lowest, TIP * lowest.width()).orElse(lowest);
  }

  /** Of the spots about as narrow as the narrowest, the one nearest to their common middle: of an even wall, its middle. */
  private static Spot central(List<Spot> group) {
    double least = group.stream().mapToDouble(Spot::width).min().orElseThrow();
    List<Spot> equal = group.stream().filter(s -> s.width() <= least + EVEN).toList();
    Vec middle = SpotSpread.middle(equal);
    return equal.stream().min(Comparator.comparingDouble((Spot s) -> s.ball().middle().distance(middle)))
        .orElseThrow();
  }
}
