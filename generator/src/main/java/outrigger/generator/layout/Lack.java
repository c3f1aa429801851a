package outrigger.generator.layout;

/**
 * By how much a room is too small for an item, the better way round; mm, 0 where it is large enough.
 *
 * @param length along the truck
 * @param width across the truck
 * @param height upwards
 */
public record Lack(double length, double width, double height) {
  /** Nothing. */
  public static final Lack NONE = new Lack(0, 0, 0);

  /** Whether nothing lacks. */
  public boolean isNone() {
    return equals(NONE);
  }
}
