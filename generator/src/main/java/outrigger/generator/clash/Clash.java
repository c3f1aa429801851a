package outrigger.generator.clash;

import java.util.List;
import outrigger.generator.accessory.Words;

/**
 * Two elements in the same place.
 *
 * @param first the one that was given first
 * @param volume what they have in common, mm^3, above 0
 * @param overlaps its pieces, the largest first, at least one
 */
public record Clash(Element first, Element second, double volume, List<Overlap> overlaps) {
  public Clash {
    overlaps = List.copyOf(overlaps);
  }

  /** Who, how much and where, one sentence. */
  public String words() {
    String more = overlaps.size() == 1 ? "" : ", the largest of " + overlaps.size() + " places";
    return first.words() + " and " + second.words() + " share " + Words.number(volume) + " mm^3: "
        + overlaps.get(0).words() + more + ".";
  }
}
