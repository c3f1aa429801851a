package outrigger.generator.stack;

import java.util.List;

/**
 * How far a sum may be off when its members are; mm either way.
 *
 * @param worst all off by their most the same way
 * @param rootSumSquare what independent, centred members of like spread mostly stay within
 */
public record Spread(double worst, double rootSumSquare) {

  /**
   * The spread of a sum: whether a member is added or taken away makes no difference to it.
   *
   * @param members how far each member may be off
   * @param systematic what shifts the sum always the same way: it is added to both, never under the root
   */
  public static Spread of(List<Double> members, double systematic) {
    double sum = 0;
    double squares = 0;
    for (double member : members) {
      sum += member;
      squares += member * member;
    }
    return new Spread(sum + systematic, Math.sqrt(squares) + systematic);
  }
}
