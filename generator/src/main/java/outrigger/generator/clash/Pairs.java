package outrigger.generator.clash;

import java.util.EnumSet;
import java.util.Set;

/** Which pairs of elements matter, and which may rest against each other. */
final class Pairs {
  /** A tool comes before the body is on, and ways may cross; rails are drilled for the shanks that run through them. */
  private static final Set<Sort> MEASURED = EnumSet.of(Sort.RAIL, Sort.KEEP_OUT);

  private Pairs() {}

  /** Whether two elements may clash at all. */
  static boolean matter(Element a, Element b) {
    if (a.group().equals(b.group())) {
      return false;
    }
    if (both(a, b, Sort.WAY, Sort.WAY) || both(a, b, Sort.WAY, Sort.KEEP_OUT) || both(a, b, Sort.SHANK, Sort.RAIL)) {
      return false;
    }
    if (a.sort() == b.sort() && MEASURED.contains(a.sort())) {
      return false;
    }
    return !both(a, b, Sort.SHANK, Sort.PART) || !a.isSeatedWith(b);
  }

  /** Whether two elements may touch. */
  static boolean mayTouch(Element a, Element b) {
    return a.isSeatedWith(b) || both(a, b, Sort.PART, Sort.RAIL) || both(a, b, Sort.PART, Sort.ITEM)
        || both(a, b, Sort.HEAD, Sort.RAIL) || a.sort() == Sort.WAY || b.sort() == Sort.WAY;
  }

  private static boolean both(Element a, Element b, Sort one, Sort other) {
    return a.sort() == one && b.sort() == other || a.sort() == other && b.sort() == one;
  }
}
