package outrigger.generator.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.generator.layout.Packing.Box;
import outrigger.generator.layout.Packing.Spot;

class PackingTest {
  private static final long SEED = 20260102;

  @Test
  void lay_pinwheel_isFound() {
    // Five pieces that no straight cut divides: four 2 x 1 round a square of 1, in 3 x 3.
    List<Box> wheel = List.of(new Box(2, 1), new Box(2, 1), new Box(1, 1), new Box(2, 1), new Box(2, 1));
    requireValid(wheel, Packing.lay(wheel, 3, 3).orElseThrow(), 3, 3);
    assertTrue(Packing.lay(wheel, 3, 2).isEmpty());
    assertEquals(Optional.of(3L), Packing.leastLength(wheel, 3));
  }

  @Test
  void lay_oneMicrometreTooLong_isNotFound() {
    List<Box> two = List.of(new Box(40_000, 30_000), new Box(35_000, 30_000));
    assertTrue(Packing.lay(two, 75_000, 30_000).isPresent());
    assertTrue(Packing.lay(two, 74_999, 30_000).isEmpty());
    assertEquals(Optional.of(75_000L), Packing.leastLength(two, 30_000));
  }

  @Test
  void lay_turnedBox_fitsOnlyCrosswise() {
    Spot spot = Packing.lay(List.of(new Box(10, 4)), 5, 10).orElseThrow().get(0);
    assertEquals(new Spot(0, 0, 0, 4, 10), spot);
  }

  @Test
  void leastLength_tooWideEitherWay_isNone() {
    assertTrue(Packing.leastLength(List.of(new Box(10, 8)), 7).isEmpty());
    assertEquals(Optional.of(0L), Packing.leastLength(List.of(), 7));
  }

  @Test
  void lay_cutUpRectangles_areAlwaysFoundAgain() {
    Random random = new Random(SEED);
    for (int round = 0; round < 300; round++) {
      List<Box> boxes = cutUp(random, 60, 40, 2 + random.nextInt(5));
      String name = "seed " + SEED + " round " + round + " " + boxes;
      Optional<List<Spot>> spots = Packing.lay(boxes, 60, 40);
      assertTrue(spots.isPresent(), name);
      requireValid(boxes, spots.get(), 60, 40);
      assertTrue(Packing.lay(boxes, 59, 40).isEmpty(), name);
      assertEquals(Optional.of(60L), Packing.leastLength(boxes, 40), name);
    }
  }

  /** An independent answer: every position on a coarse grid, one box after the other. */
  @Test
  void lay_randomBoxes_agreesWithTryingEveryPosition() {
    Random random = new Random(SEED);
    int fits = 0;
    for (int round = 0; round < 400; round++) {
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < 2 + random.nextInt(3); i++) {
        boxes.add(new Box(1 + random.nextInt(6), 1 + random.nextInt(5)));
      }
      boolean expected = anywhere(boxes, 0, new boolean[7][6]);
      assertEquals(expected, Packing.lay(boxes, 7, 6).isPresent(), "seed " + SEED + " round " + round + " " + boxes);
      fits += expected ? 1 : 0;
    }
    assertTrue(fits > 50 && fits < 350, "the cases are one-sided: " + fits);
  }

  /** The same on floors whose walls close in by steps: what lies outside them is taken from the start. */
  @Test
  void lay_steppedFloor_agreesWithTryingEveryPosition() {
    Random random = new Random(SEED);
    int fits = 0;
    for (int round = 0; round < 600; round++) {
      boolean[][] taken = new boolean[7][6];
      List<Floor.Section> sections = new ArrayList<>();
      int low = 0;
      int high = 6;
      for (int x = 0; x < 7; x++) {
        if (x > 0 && random.nextInt(3) == 0) {
          low = Math.min(high, low + random.nextInt(2));
          high = Math.max(low, high - random.nextInt(2));
        }
        fill(taken, x, 0, 1, low, true);
        fill(taken, x, high, 1, 6 - high, true);
        sections.add(new Floor.Section(x, x + 1, low, low, high, high));
      }
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < 2 + random.nextInt(3); i++) {
        boxes.add(new Box(1 + random.nextInt(5), 1 + random.nextInt(4)));
      }
      boolean expected = anywhere(boxes, 0, taken);
      assertEquals(expected, Packing.lay(boxes, new Floor(sections)).isPresent(),
          "seed " + SEED + " round " + round + " " + boxes + " " + sections);
      fits += expected ? 1 : 0;
    }
    assertTrue(fits > 100 && fits < 500, "the cases are one-sided: " + fits);
  }

  private static boolean anywhere(List<Box> boxes, int next, boolean[][] taken) {
    if (next == boxes.size()) {
      return true;
    }
    Box box = boxes.get(next);
    return anywhere(boxes, next, taken, (int) box.length(), (int) box.width())
        || anywhere(boxes, next, taken, (int) box.width(), (int) box.length());
  }

  private static boolean anywhere(List<Box> boxes, int next, boolean[][] taken, int length, int width) {
    for (int x = 0; x + length <= taken.length; x++) {
      for (int y = 0; y + width <= taken[0].length; y++) {
        if (isFree(taken, x, y, length, width)) {
          fill(taken, x, y, length, width, true);
          boolean found = anywhere(boxes, next + 1, taken);
          fill(taken, x, y, length, width, false);
          if (found) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean isFree(boolean[][] taken, int x, int y, int length, int width) {
    for (int i = x; i < x + length; i++) {
      for (int j = y; j < y + width; j++) {
        if (taken[i][j]) {
          return false;
        }
      }
    }
    return true;
  }

  private static void fill(boolean[][] taken, int x, int y, int length, int width, boolean value) {
    for (int i = x; i < x + length; i++) {
      for (int j = y; j < y + width; j++) {
        taken[i][j] = value;
      }
    }
  }

  /** Cuts a rectangle straight across, again and again, and turns and shuffles the pieces. */
  private static List<Box> cutUp(Random random, int length, int width, int pieces) {
    List<Box> boxes = new ArrayList<>(List.of(new Box(length, width)));
    while (boxes.size() < pieces) {
      Box box = boxes.remove(random.nextInt(boxes.size()));
      boolean along = random.nextBoolean();
      long side = along ? box.length() : box.width();
      if (side < 2) {
        boxes.add(box);
        continue;
      }
      long cut = 1 + random.nextInt((int) side - 1);
      boxes.add(along ? new Box(cut, box.width()) : new Box(box.length(), cut));
      boxes.add(along ? new Box(side - cut, box.width()) : new Box(side - cut, box.length()));
    }
    Collections.shuffle(boxes, random);
    return boxes;
  }

  private static void requireValid(List<Box> boxes, List<Spot> spots, long along, long across) {
    assertEquals(boxes.size(), spots.size());
    for (Spot s : spots) {
      Box box = boxes.get(s.box());
      assertTrue(s.length() == box.length() && s.width() == box.width()
          || s.length() == box.width() && s.width() == box.length(), s.toString());
      assertTrue(s.x() >= 0 && s.y() >= 0 && s.x() + s.length() <= along && s.y() + s.width() <= across, s.toString());
      for (Spot t : spots) {
        assertTrue(s.box() == t.box() || s.x() + s.length() <= t.x() || t.x() + t.length() <= s.x()
            || s.y() + s.width() <= t.y() || t.y() + t.width() <= s.y(), s + " lies on " + t);
      }
    }
  }
}
