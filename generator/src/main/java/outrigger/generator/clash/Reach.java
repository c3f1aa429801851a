package outrigger.generator.clash;

import java.util.List;
import outrigger.generator.accessory.Words;

/**
 * How far a tool's straight way to a head is free.
 *
 * @param free length from the head to the first thing in the way, mm; the whole way's length if there is none
 * @param blockers names of what stands within the way, the nearest first
 */
public record Reach(ToolWay way, double free, List<String> blockers) {
  public Reach {
    blockers = List.copyOf(blockers);
  }

  /** Whether a tool gets to the head at all. */
  public boolean isOpen() {
    return free >= way.bent();
  }

  /** Whether it takes a bent key, for want of a straight way. */
  public boolean needsBentKey() {
    return isOpen() && free < way.length();
  }

  /** Which head, how much room there is and what it is good for, one sentence. */
  public String words() {
    if (isOpen() && !needsBentKey()) {
      return way.screw() + ": " + Words.mm(way.length()) + " straight and free.";
    }
    String room = way.screw() + ": " + Words.mm(free) + " free, then " + blockers.get(0);
    return needsBentKey() ? room + "; a bent key with a short arm of up to that, no straight driver."
        : room + "; a tool needs " + Words.mm(way.bent()) + " straight.";
  }
}
