package outrigger.generator.stack;

import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param answers the best stacks, best first; empty if nothing reaches the target
 * @param reaching how many stacks of the pieces looked at reach it
 * @param pieces greatest number of pieces looked at: every stack of up to so many was decided
 * @param kinds how many kinds of piece there were, the printed block not counted
 * @param combinations how many different stacks there are of up to so many pieces
 * @param lookups how many steps it took to decide them
 * @param below the nearest stack below the target that misses it, if there is one
 * @param above the nearest one above
 */
public record Found(List<Stack> answers, long reaching, int pieces, int kinds, long combinations, long lookups,
    Optional<Stack> below, Optional<Stack> above) {
  public Found {
    answers = List.copyOf(answers);
  }
}
