package outrigger.generator.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.generator.layout.Packing.Box;
import outrigger.generator.layout.Packing.Spot;

/** Floors that close in and part again, against trying every place on a coarse grid, one box after the other. */
class NarrowsTest {
  private static final long SEED = 20261126;
  private static final int ALONG = 9;
  private static final int ACROSS = 6;

  /** Walls that part by 0.1 on each side for every 1 along, from 30 to 40, and close in again. */
  private static final Floor BULGE = new Floor(List.of(new Floor.Section(0, 50_000, 5_000, 0, 35_000, 40_000),
      new Floor.Section(50_000, 100_000, 0, 5_000, 40_000, 35_000)));

  /** 60 long about the middle, the walls are 40 - 0.2 x 30 = 34 apart at its ends. */
  @Test
  void lay_bulge_takesABoxThatLiesOverItsMiddle() {
    assertEquals(new Spot(0, 20_000, 3_000, 60_000, 34_000),
        Narrows.lay(List.of(new Box(60_000, 34_000)), BULGE).orElseThrow().get(0));
    assertTrue(Narrows.lay(List.of(new Box(60_000, 34_001)), BULGE).isEmpty());
  }

  /** Two that meet at m are 30 + 0.2 (m - 45) and 30 + 0.2 (55 - m) wide at most: what one gains the other loses. */
  @Test
  void lay_bulge_sharesTheRoomBetweenTwoBoxes() {
    assertTrue(Narrows.lay(List.of(new Box(45_000, 31_000), new Box(45_000, 31_000)), BULGE).isPresent());
    assertTrue(Narrows.lay(List.of(new Box(45_000, 31_400), new Box(45_000, 30_600)), BULGE).isPresent());
    assertTrue(Narrows.lay(List.of(new Box(45_000, 31_400), new Box(45_000, 30_601)), BULGE).isEmpty());
  }

  /** A box in front of the waist, one behind it and one through it: no straight strip and no zone takes all three. */
  @Test
  void lay_waist_mixesThroughAndBothSides() {
    Floor floor = new Floor(List.of(new Floor.Section(0, 30, 0, 0, 40, 40), new Floor.Section(30, 50, 0, 0, 20, 20),
        new Floor.Section(50, 80, 0, 0, 40, 40)));
    List<Box> boxes = List.of(new Box(80, 18), new Box(30, 22), new Box(28, 22));
    requireValid(boxes, Narrows.lay(boxes, floor).orElseThrow(), floor);
    assertTrue(Narrows.lay(List.of(new Box(80, 18), new Box(30, 22), new Box(31, 22)), floor).isEmpty());
  }

  @Test
  void lay_steppedFloor_agreesWithTryingEveryPlace() {
    compare(new Random(SEED), 1500, false);
  }

  @Test
  void lay_slopingWalls_agreesWithTryingEveryPlace() {
    compare(new Random(SEED + 1), 1500, true);
  }

  private static void compare(Random random, int rounds, boolean slopes) {
    int fits = 0;
    for (int round = 0; round < rounds; round++) {
      Floor floor = floor(random, slopes);
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(4); i++) {
        boxes.add(i > 0 && random.nextInt(4) == 0 ? boxes.get(0) : new Box(1 + random.nextInt(6), 1 + random.nextInt(4)));
      }
      boolean expected = anywhere(boxes, floor, new ArrayList<>());
      Optional<List<Spot>> found = Narrows.lay(boxes, floor);
      String name = "seed " + SEED + " round " + round + " " + boxes + " " + floor;
      assertEquals(expected, found.isPresent(), name);
      found.ifPresent(spots -> requireValid(boxes, spots, floor));
      fits += expected ? 1 : 0;
    }
    assertTrue(fits > rounds / 6 && fits < rounds * 5 / 6, "the cases are one-sided: " + fits);
  }

  private static Floor floor(Random random, boolean slopes) {
    List<Floor.Section> sections = new ArrayList<>();
    int low = random.nextInt(2);
    int high = ACROSS - random.nextInt(2);
    for (int x = 0; x < ALONG;) {
      int to = Math.min(ALONG, x + 1 + random.nextInt(4));
      int lowTo = slopes ? random.nextInt(3) : low;
      int highTo = slopes ? ACROSS - random.nextInt(3) : high;
      sections.add(new Floor.Section(x, to, low, lowTo, high, highTo));
      boolean isStep = !slopes || random.nextInt(3) == 0;
      low = isStep ? random.nextInt(3) : lowTo;
      high = isStep ? ACROSS - random.nextInt(3) : highTo;
      x = to;
    }
    return new Floor(sections);
  }

  private static boolean anywhere(List<Box> boxes, Floor floor, List<Spot> laid) {
    if (laid.size() == boxes.size()) {
      return true;
    }
    Box box = boxes.get(laid.size());
    return anywhere(boxes, floor, laid, box.length(), box.width()) || anywhere(boxes, floor, laid, box.width(), box.length());
  }

  private static boolean anywhere(List<Box> boxes, Floor floor, List<Spot> laid, long length, long width) {
    for (long x = 0; x + length <= ALONG; x++) {
      for (long y = 0; y + width <= ACROSS; y++) {
        Spot spot = new Spot(laid.size(), x, y, length, width);
        if (isWithin(spot, floor) && laid.stream().allMatch(other -> areApart(spot, other))) {
          laid.add(spot);
          boolean found = anywhere(boxes, floor, laid);
          laid.remove(laid.size() - 1);
          if (found) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** By the walls' own equation at every whole place along the box, and on both sides of a step. */
  private static boolean isWithin(Spot spot, Floor floor) {
    for (Floor.Section s : floor.sections()) {
      for (long x = Math.max(s.from(), spot.x()); x <= Math.min(s.to(), spot.x() + spot.length()); x++) {
        double share = (double) (x - s.from()) / (s.to() - s.from());
        boolean isTouched = s.from() < spot.x() + spot.length() && s.to() > spot.x();
        if (isTouched && (spot.y() < s.lowFrom() + share * (s.lowTo() - s.lowFrom()) - 1e-9
            || spot.y() + spot.width() > s.highFrom() + share * (s.highTo() - s.highFrom()) + 1e-9)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean areApart(Spot s, Spot t) {
    return s.x() + s.length() <= t.x() || t.x() + t.length() <= s.x() || s.y() + s.width() <= t.y()
        || t.y() + t.width() <= s.y();
  }

  private static void requireValid(List<Box> boxes, List<Spot> spots, Floor floor) {
    assertEquals(boxes.size(), spots.size());
    for (Spot s : spots) {
      Box box = boxes.get(s.box());
      assertTrue(s.length() == box.length() && s.width() == box.width()
          || s.length() == box.width() && s.width() == box.length(), s.toString());
      assertTrue(s.x() >= 0 && s.x() + s.length() <= floor.along() && isWithin(s, floor), s + " on " + floor);
      assertTrue(spots.stream().allMatch(t -> t == s || areApart(s, t)), spots.toString());
    }
  }
}
