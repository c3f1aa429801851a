package outrigger.presets;

/**
 * A screw by size and head, such as {@code M3-socket}; lengths mm.
 *
 * @param name size and head, the key users type
 * @param size thread, such as {@code M3}
 * @param head {@code socket}, {@code button}, {@code pan} or {@code countersunk}
 * @param standard the standard of the head
 * @param diameter nominal thread diameter
 * @param pitch thread pitch
 * @param headDiameter largest head diameter; for a countersunk head that of the sharp cone
 * @param headHeight largest head height
 * @param drive {@code hexagon}, {@code cross} or {@code hexalobular}
 * @param driveSize key width in mm, or the number of the recess
 */
public record Screw(String name, String size, String head, String standard, double diameter, double pitch,
    double headDiameter, double headHeight, String drive, double driveSize) implements Item {

  public Screw {
    Checks.text("name", name);
    Checks.text("size", size);
    Checks.text("head", head);
    Checks.text("standard", standard);
    Checks.text("drive", drive);
    Checks.positive("diameter", diameter);
    Checks.positive("pitch", pitch);
    Checks.positive("head-diameter", headDiameter);
    Checks.positive("head-height", headHeight);
    Checks.zeroOrMore("drive-size", driveSize);
    Checks.below("pitch", pitch, "diameter", diameter);
    Checks.below("diameter", diameter, "head-diameter", headDiameter);
  }

  /** Whether the head is a 90 degree cone that sits flush. */
  public boolean isCountersunk() {
    return head.equals("countersunk");
  }
}
