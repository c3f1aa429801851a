package outrigger.generator.clash;

import java.util.List;

/**
 * What a check found.
 *
 * @param clashes pairs with a common volume, in the order of the elements
 * @param near pairs without, nearer than was asked, the nearest first
 * @param reaches one for each tool's way, in the order given
 * @param elements how many elements there were, tools' ways included
 * @param pairs how many pairs matter
 * @param within least distance above which a pair is not listed, mm
 */
public record ClashReport(List<Clash> clashes, List<Near> near, List<Reach> reaches, int elements, int pairs,
    double within) {
  public ClashReport {
    clashes = List.copyOf(clashes);
    near = List.copyOf(near);
    reaches = List.copyOf(reaches);
  }

  /** Whether nothing shares a place and every head can be reached. */
  public boolean isClear() {
    return clashes.isEmpty() && reaches.stream().allMatch(Reach::isOpen);
  }

  /** Pairs that touch and are not meant to. */
  public List<Near> touches() {
    return near.stream().filter(Near::isTouch).toList();
  }
}
