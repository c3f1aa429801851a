package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Somewhere that items may lie on one level: a tray, or the space between rails; mm.
 *
 * @param name what it is called, unlike any other
 * @param sections pieces with straight walls, from rear to front, each beginning where the one before ends
 * @param height free above its floor
 */
public record Room(String name, List<Section> sections, double height) {
  /**
   * A piece with straight walls.
   *
   * @param rear x of its rear end
   * @param front x of its front end
   * @param rearRight y of the right wall at the rear end
   * @param rearLeft y of the left wall there
   * @param frontRight y of the right wall at the front end
   * @param frontLeft y of the left wall there
   */
  public record Section(double rear, double front, double rearRight, double rearLeft, double frontRight,
      double frontLeft) {
    public Section {
      if (!(rear < front && rearRight <= rearLeft && frontRight <= frontLeft)) {
        throw new IllegalArgumentException("a section from " + rear + " to " + front + " is none");
      }
    }

    private Optional<Section> cut(double from, double to) {
      // Walls that meet may cross by a last binary digit in between.
      return from < to ? Optional.of(new Section(from, to, right(from), Math.max(right(from), left(from)), right(to),
          Math.max(right(to), left(to)))) : Optional.empty();
    }

    /** The same in pieces over each of which a line straight along lies on one side of both walls. */
    private List<Section> cutAlong(double y) {
      TreeSet<Double> ends = new TreeSet<>(List.of(rear, front));
      double[] shares = {(y - rearRight) / (frontRight - rearRight), (y - rearLeft) / (frontLeft - rearLeft)};
      for (double share : shares) {
        if (share > 0 && share < 1) {
          ends.add(rear + share * (front - rear));
        }
      }
      return ends.headSet(front).stream().map(from -> cut(from, ends.higher(from))).flatMap(Optional::stream).toList();
    }

    private Section leftUpTo(double y) {
      return new Section(rear, front, rearRight, Math.max(rearRight, Math.min(rearLeft, y)), frontRight,
          Math.max(frontRight, Math.min(frontLeft, y)));
    }

    private Section rightFrom(double y) {
      return new Section(rear, front, Math.min(rearLeft, Math.max(rearRight, y)), rearLeft,
          Math.min(frontLeft, Math.max(frontRight, y)), frontLeft);
    }

    double right(double x) {
      return rearRight + (frontRight - rearRight) * (x - rear) / (front - rear);
    }

    double left(double x) {
      return rearLeft + (frontLeft - rearLeft) * (x - rear) / (front - rear);
    }
  }

  public Room {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new IllegalArgumentException(name + " has no sections");
    }
    for (int i = 1; i < sections.size(); i++) {
      if (sections.get(i).rear() != sections.get(i - 1).front()) {
        throw new IllegalArgumentException(name + " has a gap at " + sections.get(i).rear());
      }
    }
  }

  /** A rectangle about a middle. */
  public static Room rectangle(String name, double x, double y, double length, double width, double height) {
    return new Room(name, List.of(new Section(x - length / 2, x + length / 2, y - width / 2, y + width / 2,
        y - width / 2, y + width / 2)), height);
  }

  /** x of the rear end. */
  public double rear() {
    return sections.get(0).rear();
  }

  /** x of the front end. */
  public double front() {
    return sections.get(sections.size() - 1).front();
  }

  /** How long it is. */
  public double length() {
    return front() - rear();
  }

  /** How wide it is where it is widest. */
  public double widest() {
    return sections.stream().mapToDouble(s -> Math.max(s.rearLeft() - s.rearRight(), s.frontLeft() - s.frontRight()))
        .max().orElseThrow();
  }

  /** How wide it is where it is narrowest. */
  public double narrowest() {
    return sections.stream().mapToDouble(s -> Math.min(s.rearLeft() - s.rearRight(), s.frontLeft() - s.frontRight()))
        .min().orElseThrow();
  }

  /** y of the right wall where it comes in most between two x. */
  double right(double from, double to) {
    return sections.stream().filter(s -> s.front() > from && s.rear() < to)
        .mapToDouble(s -> Math.max(s.right(Math.max(from, s.rear())), s.right(Math.min(to, s.front())))).max()
        .orElseThrow();
  }

  /** y of the left wall where it comes in most between two x. */
  double left(double from, double to) {
    return sections.stream().filter(s -> s.front() > from && s.rear() < to)
        .mapToDouble(s -> Math.min(s.left(Math.max(from, s.rear())), s.left(Math.min(to, s.front())))).min()
        .orElseThrow();
  }

  /** The same room so much longer at both ends together and wider on both sides together. */
  Room larger(double length, double width) {
    List<Section> more = new ArrayList<>();
    double half = width / 2;
    for (Section s : sections) {
      more.add(new Section(s.rear(), s.front(), s.rearRight() - half, s.rearLeft() + half, s.frontRight() - half,
          s.frontLeft() + half));
    }
    if (length > 0) {
      Section first = more.get(0);
      Section last = more.get(more.size() - 1);
      if (first.rearLeft() - first.rearRight() > last.frontLeft() - last.frontRight()) {
        more.add(0, new Section(first.rear() - length, first.rear(), first.rearRight(), first.rearLeft(),
            first.rearRight(), first.rearLeft()));
      } else {
        more.add(new Section(last.front(), last.front() + length, last.frontRight(), last.frontLeft(),
            last.frontRight(), last.frontLeft()));
      }
    }
    return new Room(name, more, height);
  }

  /**
   * The same room kept clear of something at one of its walls: between two x that wall comes in to what is there.
   *
   * @param right least y of what is there, to keep clear of where it lies at the left wall
   * @param left its greatest y, to keep clear of where it lies at the right wall
   */
  public Room clearOf(double rear, double front, double right, double left) {
    boolean atLeft = right + left > 0;
    List<Section> more = new ArrayList<>();
    for (Section s : sections) {
      double from = Math.max(s.rear(), rear);
      double to = Math.min(s.front(), front);
      if (from >= to) {
        more.add(s);
        continue;
      }
      s.cut(s.rear(), from).ifPresent(more::add);
      s.cut(from, to).stream().flatMap(piece -> piece.cutAlong(atLeft ? right : left).stream())
          .map(piece -> atLeft ? piece.leftUpTo(right) : piece.rightFrom(left)).forEach(more::add);
      s.cut(to, s.front()).ifPresent(more::add);
    }
    return new Room(name, more, height);
  }
}
