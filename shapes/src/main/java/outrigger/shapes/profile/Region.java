package outrigger.shapes.profile;

import java.util.List;

/** A connected flat area: one shell counter-clockwise, its holes clockwise and in order of their first corners. */
public record Region(Ring shell, List<Ring> holes) implements Comparable<Region> {
  public Region {
    holes = holes.stream().sorted().toList();
  }

  /** Twice the area in square grid units. Exact. */
  public long doubleArea() {
    long sum = shell.doubleArea();
    for (Ring hole : holes) {
      sum += hole.doubleArea();
    }
    return sum;
  }

  /** By shells; the shells of one profile differ. */
  @Override
  public int compareTo(Region other) {
    return shell.compareTo(other.shell);
  }
}
