package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lays rectangles on a floor, exactly: it finds a way wherever there is one.
 *
 * <p>Every way of lying can be pushed together so that the rectangles, taken in a certain order, each lie in a corner
 * of the stair that those before them make with the two walls they are pushed against (Martello, Pisinger, Vigo: The
 * three-dimensional bin packing problem, 2000; in the plane nothing is lost by it). So all orders, both ways to turn
 * each, and all corners of the stair are tried, and a branch is left as soon as what is still to be laid is larger
 * than what lies outside the stair. Lengths are whole micrometres.
 *
 * <p>On a floor that narrows, a rectangle goes from its corner sideways until it clears the wall. Nothing is lost by that
 * either: pushed towards the wide end it only gains room, so each still lies no further out than in the way it came from.
 */
public final class Packing {
  /** Most rectangles it takes: the work grows beyond all bounds with their number. */
  public static final int MOST = 6;

  private final List<Box> boxes;
  private final Floor floor;
  private final List<Spot> laid = new ArrayList<>();
  private List<Spot> best = List.of();
  private long along;

  /** A rectangle to lay, micrometres. */
  public record Box(long length, long width) {}

  /**
   * Where a rectangle lies, micrometres from the corner.
   *
   * @param box its number in the list
   * @param length along the area as it lies
   */
  public record Spot(int box, long x, long y, long length, long width) {}

  /** A corner of the stair. */
  private record Corner(long x, long y) {}

  private Packing(List<Box> boxes, Floor floor, long along) {
    if (boxes.size() > MOST) {
      throw new IllegalArgumentException(boxes.size() + " boxes");
    }
    this.boxes = List.copyOf(boxes);
    this.along = along;
    this.floor = floor;
  }

  /** A way to lay all boxes into an area, if there is one. */
  public static Optional<List<Spot>> lay(List<Box> boxes, long along, long across) {
    return lay(boxes, Floor.rectangle(along, across));
  }

  /** A way to lay all boxes on a floor that narrows or keeps its width, if there is one. */
  public static Optional<List<Spot>> lay(List<Box> boxes, Floor floor) {
    Packing packing = new Packing(boxes, floor, floor.along());
    return packing.search(0, area(boxes), true) ? Optional.of(packing.best) : Optional.empty();
  }

  /** The least length of an area of the given width that takes all boxes; empty where a box is too wide either way. */
  public static Optional<Long> leastLength(List<Box> boxes, long across) {
    long all = boxes.stream().mapToLong(b -> Math.max(b.length, b.width)).sum();
    Packing packing = new Packing(boxes, Floor.rectangle(all, across), all);
    packing.search(0, area(boxes), false);
    return packing.best.size() < boxes.size() ? Optional.empty()
        : Optional.of(end(packing.best));
  }

  private static long end(List<Spot> spots) {
    long end = 0;
    for (Spot spot : spots) {
      end = Math.max(end, spot.x + spot.length);
    }
    return end;
  }

  private static long area(List<Box> boxes) {
    long area = 0;
    for (Box box : boxes) {
      area += box.length * box.width;
    }
    return area;
  }

  /**
   * Lays what is left of the boxes.
   *
   * @param used a bit for each box laid
   * @param left area still to be laid
   * @param first whether the first way will do; else the area is shortened below each way found
   */
  private boolean search(int used, long left, boolean first) {
    if (laid.size() == boxes.size()) {
      best = List.copyOf(laid);
      along = end(laid) - 1;
      return first;
    }
    List<Corner> stair = stair();
    if (left > free(stair)) {
      return false;
    }
    for (int i = 0; i < boxes.size(); i++) {
      if ((used >> i & 1) == 0 && isFirstOfItsKind(i, used) && place(i, stair, used, left, first)) {
        return true;
      }
    }
    return false;
  }

  /** Of equal boxes only the first unlaid one is tried. */
  private boolean isFirstOfItsKind(int i, int used) {
    for (int j = 0; j < i; j++) {
      if ((used >> j & 1) == 0 && boxes.get(j).equals(boxes.get(i))) {
        return false;
      }
    }
    return true;
  }

  private boolean place(int i, List<Corner> stair, int used, long left, boolean first) {
    Box box = boxes.get(i);
    return placed(i, box.length, box.width, stair, used, left, first)
        || box.length != box.width && placed(i, box.width, box.length, stair, used, left, first);
  }

  private boolean placed(int i, long length, long width, List<Corner> stair, int used, long left, boolean first) {
    for (Corner corner : stair) {
      long end = corner.x + length;
      long y = end > along ? 0 : Math.max(corner.y, floor.low(end));
      if (end <= along && y + width <= floor.high(end)) {
        laid.add(new Spot(i, corner.x, y, length, width));
        boolean found = search(used | 1 << i, left - length * width, first);
        laid.remove(laid.size() - 1);
        if (found) {
          return true;
        }
      }
    }
    return false;
  }

  /** Corners of the stair, rising along x. */
  private List<Corner> stair() {
    List<Spot> tops = new ArrayList<>(laid);
    tops.sort(Comparator.comparingLong((Spot s) -> s.y + s.width).reversed());
    List<Corner> corners = new ArrayList<>();
    long reach = 0;
    for (Spot spot : tops) {
      if (spot.x + spot.length > reach) {
        corners.add(new Corner(reach, spot.y + spot.width));
        reach = spot.x + spot.length;
      }
    }
    corners.add(new Corner(reach, 0));
    return corners;
  }

  /** Area that may still be laid, at most. */
  private double free(List<Corner> stair) {
    return floor.isRectangle() ? (double) along * floor.high(0) - under(stair)
        : floor.area() - laid.stream().mapToDouble(s -> (double) s.length * s.width).sum();
  }

  /** Area under the stair: each step reaches from its corner to the next. */
  private static long under(List<Corner> stair) {
    long area = 0;
    for (int i = 0; i + 1 < stair.size(); i++) {
      area += (stair.get(i + 1).x - stair.get(i).x) * stair.get(i).y;
    }
    return area;
  }
}
