package outrigger.generator.clash;

import java.util.ArrayList;
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

  /** What keeps the truck from going together: clashes, then heads out of reach; none where it is clear. */
  public List<String> faults() {
    List<String> lines = new ArrayList<>();
    clashes.forEach(clash -> lines.add("Clash: " + clash.words()));
    reaches.stream().filter(reach -> !reach.isOpen()).forEach(reach -> lines.add("Out of reach: " + reach.words()));
    return lines;
  }

  /** The working, one sentence a line: clashes, heads out of reach, touches, then the nearest that is free. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(faults());
    reaches.stream().filter(Reach::needsBentKey).forEach(reach -> lines.add("Bent key only: " + reach.words()));
    touches().forEach(touch -> lines.add("Touch: " + touch.words()));
    long open = reaches.stream().filter(Reach::isOpen).count();
    lines.add(pairs + " pairs of " + elements + " things looked at: " + clashes.size() + " clash, " + open + " of "
        + reaches.size() + " screw heads can be reached.");
    near.stream().filter(one -> one.distance() > 0).findFirst().ifPresent(one -> lines.add("Nearest: " + one.words()));
    return lines;
  }
}
