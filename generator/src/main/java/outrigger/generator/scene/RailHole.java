package outrigger.generator.scene;

import outrigger.generator.truck.HoleRow;

/**
 * A hole that a screw needs through a web.
 *
 * @param part that is screwed to the rail
 * @param left whether through the left rail, else the right one
 * @param screw its size, such as {@code M3}
 * @param diameter of the hole, mm
 * @param x of its middle, mm
 * @param drop from the rail's top edge down to its middle, mm
 * @param nearest hole there is already; {@link Existing#NONE} where that rail has none
 */
public record RailHole(String part, boolean left, String screw, double diameter, double x, double drop,
    Existing nearest) {

  /**
   * A hole that is there already, seen from the one that is needed.
   *
   * @param row its row
   * @param number in that row from the front, 1 the foremost; 0 where there is none
   * @param ahead how far it lies ahead, mm
   * @param below how far it lies below, mm
   * @param play by which a screw may lie off its middle, mm
   * @param diameter mm
   */
  public record Existing(String row, int number, double ahead, double below, double play, double diameter) {
    /** No hole. */
    public static final Existing NONE = new Existing("", 0, 0, 0, 0, 0);

    static Existing of(HoleRow row, int index, double x, double drop, double screw) {
      return new Existing(row.name(), index + 1, row.x() - index * row.pitch() - x, row.drop() - drop,
          (row.diameter() - screw) / 2, row.diameter());
    }

    /** Whether there is one. */
    public boolean exists() {
      return number > 0;
    }

    /** How far its middle lies off, mm. */
    public double away() {
      return Math.hypot(ahead, below);
    }
  }

  /** Whether the screw passes through a hole that is there. */
  public boolean isThere() {
    return nearest.exists() && nearest.away() <= nearest.play() + 1e-6;
  }

  /** Whether drilling it would break into the hole that is there. */
  public boolean breaksIn() {
    return nearest.exists() && !isThere() && nearest.away() < (diameter + nearest.diameter()) / 2;
  }
}
