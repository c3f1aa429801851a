package outrigger.generator.clash;

import java.util.Set;
import outrigger.shapes.solid.Solid;

/**
 * Something with a place on the truck.
 *
 * @param name what users know it by; no two elements of a check share one
 * @param sort what it is
 * @param group the screw a head, shank or tool's way belongs to; its own name for everything else
 * @param seats names of elements it may rest against: a mount its pad, a screw the part it holds
 * @param solid its shape in truck axes, mm
 */
public record Element(String name, Sort sort, String group, Set<String> seats, Solid solid) {
  public Element {
    if (name.isBlank()) {
      throw new IllegalArgumentException("an element without a name");
    }
    seats = Set.copyOf(seats);
  }

  /** An element that rests against nothing but what {@link Pairs} allows to all of its sort. */
  public static Element of(String name, Sort sort, Solid solid) {
    return new Element(name, sort, name, Set.of(), solid);
  }

  /** The same, resting against others. */
  public Element seatedOn(String... others) {
    return new Element(name, sort, group, Set.of(others), solid);
  }

  boolean isSeatedWith(Element other) {
    return seats.contains(other.name) || other.seats.contains(name);
  }

  /** Its sort and name, such as {@code rail left}. */
  public String words() {
    return sort == Sort.PART || name.contains(sort.word()) ? name : sort.word() + " " + name;
  }
}
