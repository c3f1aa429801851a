package outrigger.generator.clash;

import outrigger.generator.accessory.Words;

/**
 * Two elements close to each other without a common volume.
 *
 * @param first the one that was given first
 * @param distance least distance of their surfaces, mm; 0 where they touch
 * @param at the middle between their nearest points
 * @param isSeat whether they are meant to touch
 */
public record Near(Element first, Element second, double distance, Spot at, boolean isSeat) {

  /** Whether they touch though they are not meant to. */
  public boolean isTouch() {
    return distance == 0 && !isSeat;
  }

  /** Who, how near and where, one sentence. */
  public String words() {
    return first.words() + " and " + second.words() + (distance == 0 ? isSeat ? " rest against each other" : " touch"
        : " are " + Words.mm(distance) + " apart") + " at " + at.words() + ".";
  }
}
