package outrigger.generator.joint;

/**
 * What a screw ends in; mm along the screw.
 *
 * @param name what it is, such as {@code nut} or {@code insert}
 * @param length of the thread there is
 * @param needed from where the thread begins to the screw's end, at least
 * @param room free behind the thread, which the screw's end may stand into
 */
public record ScrewThread(String name, double length, double needed, double room) {
  /** A machine screw in brass or in a nut carries in full over its diameter; common practice. */
  private static final double METAL_DIAMETERS = 1;
  /** Thread a screw needs in plastic that it cuts itself, in diameters; common practice. */
  public static final double PLASTIC_DIAMETERS = 2;
  private static final String LOOSE = "nut";
  /** How far a screw's end may stand out behind its thread, in diameters; common practice. */
  private static final double ROOM_DIAMETERS = 2;

  public ScrewThread {
    if (!(length > 0 && needed > 0 && room >= 0)) {
      throw new IllegalArgumentException(name + ": length " + length + ", needed " + needed + ", room " + room);
    }
  }

  /** A nut: the screw's end stands out of it by one pitch, since its first turn does not carry; common practice. */
  public static ScrewThread nut(double height, double diameter, double pitch) {
    return new ScrewThread(LOOSE, height, height + pitch, ROOM_DIAMETERS * diameter);
  }

  /** A nut held in a pocket of the part, the same otherwise. */
  public static ScrewThread heldNut(double height, double diameter, double pitch) {
    ScrewThread nut = nut(height, diameter, pitch);
    return new ScrewThread("held nut", nut.length, nut.needed, nut.room);
  }

  /** The same with other room behind it. */
  ScrewThread withRoom(double mm) {
    return new ScrewThread(name, length, needed, mm);
  }

  /** Whether it is a nut that lies loose behind what is clamped. */
  public boolean isLooseNut() {
    return name.equals(LOOSE);
  }

  /** An insert: as deep as the screw is thick, or all of it where it is shorter. */
  public static ScrewThread insert(double length, double diameter) {
    return new ScrewThread("insert", length, Math.min(length, METAL_DIAMETERS * diameter), ROOM_DIAMETERS * diameter);
  }

  /** Plastic in which the screw cuts its own thread, or all of it where it is thinner. */
  public static ScrewThread plastic(double depth, double diameter) {
    return new ScrewThread("plastic", depth, Math.min(depth, PLASTIC_DIAMETERS * diameter), ROOM_DIAMETERS * diameter);
  }
}
