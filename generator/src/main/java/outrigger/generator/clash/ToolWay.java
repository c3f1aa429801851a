package outrigger.generator.clash;

import java.util.Set;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * The straight way a tool takes to the head of a screw.
 *
 * @param screw name of the screw, the group of its head and shank
 * @param head middle of the head's outer face
 * @param direction away from the head along the screw, length 1
 * @param diameter room round the axis that the tool takes, mm
 * @param length straight length wanted, as of a screwdriver's blade, mm
 * @param bent straight length that will do for a bent key's short arm, mm; as the length where there is no bent tool
 */
public record ToolWay(String screw, Spot head, Spot direction, double diameter, double length, double bent) {
  /**
   * Short arm of a bent hexagon key in key widths: keys of 1.5 to 3 mm have arms of 14 to 24 mm; common practice, measure
   * the key at hand.
   */
  private static final double ARM_WIDTHS = 8;
  /** Straight length of a driver's blade that a hand can work with, mm; common practice. */
  private static final double BLADE = 40;
  /** Play of a key in the hand on each side, mm; common practice. */
  private static final double PLAY = 0.25;

  /** The way of a hexagon key, mm across flats. */
  public static ToolWay hexagon(String screw, Spot head, Spot direction, double key) {
    return new ToolWay(screw, head, direction, 2 / Math.sqrt(3) * key + 2 * PLAY, BLADE, ARM_WIDTHS * key);
  }

  /** The way of a screwdriver whose blade is no wider than the head, mm. */
  public static ToolWay driver(String screw, Spot head, Spot direction, double headDiameter) {
    return new ToolWay(screw, head, direction, headDiameter, BLADE, BLADE);
  }

  public ToolWay {
    if (!(diameter > 0 && bent > 0 && bent <= length)) {
      throw new IllegalArgumentException("a way " + diameter + " wide and " + length + " or " + bent + " long");
    }
  }

  /** The room it takes. */
  Element element() {
    return new Element("way to " + screw, Sort.WAY, screw, Set.of(), solid());
  }

  private Solid solid() {
    return Prism.of(Profile.post(diameter), 0, length).place(Along.from(head, direction));
  }
}
