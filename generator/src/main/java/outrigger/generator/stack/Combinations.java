package outrigger.generator.stack;

import java.util.List;
import java.util.Optional;

/**
 * Counts the different stacks there are, without making them.
 *
 * @param pieces kinds of piece
 * @param block heights of a block, if one may be printed
 */
record Combinations(List<Piece> pieces, Optional<Block> block) {

  /** How many stacks have one piece or more, and at most so many. */
  long upTo(int limit) {
    long[] ways = ways(limit);
    long heights = block.map(Block::heights).orElse(0L);
    long all = 0;
    for (int n = 1; n <= limit; n++) {
      all += ways[n] + heights * ways[n - 1];
    }
    return all;
  }

  /** How many sets of exactly 0, 1, ... pieces there are, without a block: one kind after another is let in. */
  private long[] ways(int limit) {
    long[] ways = new long[limit + 1];
    ways[0] = 1;
    for (Piece piece : pieces) {
      for (int n = limit; n > 0; n--) {
        for (int of = 1; of <= Math.min(n, piece.count()); of++) {
          ways[n] += ways[n - of];
        }
      }
    }
    return ways;
  }
}
