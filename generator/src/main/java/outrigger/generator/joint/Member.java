package outrigger.generator.joint;

/**
 * Something a screw passes through between its head and its thread; mm.
 *
 * @param name what it is, such as {@code web}
 * @param least its thickness at the thinnest, 0 or more
 * @param most its thickness at the thickest
 */
public record Member(String name, double least, double most) {
  public Member {
    if (!(least >= 0 && least <= most && most < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " is " + least + " to " + most);
    }
  }

  /** A member of one thickness. */
  public static Member of(String name, double thickness) {
    return new Member(name, thickness, thickness);
  }
}
