package outrigger.generator.joint;

import java.util.List;

/**
 * One article of a list of hardware.
 *
 * @param count how many the truck takes
 * @param onHand how many there are
 * @param uses what each is for, such as {@code 2 for cab-front-left, flange to rail}
 */
public record HardwareLine(Piece.Kind kind, String article, int count, int onHand, List<String> uses) {
  /** One spare for so many, or part of so many; common practice. */
  private static final int A_SPARE_FOR = 10;

  public HardwareLine {
    uses = List.copyOf(uses);
  }

  /** How many more to have: small things get lost. */
  public int spares() {
    return (count + A_SPARE_FOR - 1) / A_SPARE_FOR;
  }

  /** How many to buy so that there are enough, spares included. */
  public int toBuy() {
    return Math.max(0, count + spares() - onHand);
  }
}
