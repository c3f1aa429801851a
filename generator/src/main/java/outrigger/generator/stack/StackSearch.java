package outrigger.generator.stack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;

/**
 * Finds the best stacks, all of one number of pieces before any of the next.
 *
 * <p>For each number of pieces n it walks through every choice of n - 1 pieces, thickest first, so that each set of
 * pieces comes up once; the last piece, and the height of a block in its place, is then looked up in the sorted
 * thicknesses. Choices are left out only where nothing can come of them: those already thicker than the target and its
 * tolerance (they were decided as stacks of fewer pieces), and those too thin whatever is added.
 */
final class StackSearch {
  private final List<Piece> pieces;
  private final Optional<Block> block;
  private final long target;
  private final long least;
  private final long most;
  private final int wanted;
  private final int[] used;
  private final TreeSet<Stack> best = new TreeSet<>(Stack.BEST_FIRST);
  private Optional<Stack> below = Optional.empty();
  private Optional<Stack> above = Optional.empty();
  private int level;
  private long reaching;
  private long lookups;

  /**
   * @param pieces kinds of piece, no two the same
   * @param block heights of a block, if one may be printed
   * @param target nm
   * @param tolerance how far from the target is near enough either way, nm
   * @param wanted how many answers, 1 or more
   */
  StackSearch(List<Piece> pieces, Optional<Block> block, long target, long tolerance, int wanted) {
    this.pieces = pieces.stream().filter(piece -> piece.count() > 0)
        .sorted(Comparator.comparingLong(Piece::nano).thenComparing(Piece::name)).toList();
    this.block = block;
    this.target = target;
    this.least = target - tolerance;
    this.most = target + tolerance;
    this.wanted = wanted;
    this.used = new int[this.pieces.size()];
  }

  /** Looks at stacks of one piece, then of two and so on, until there are enough answers or no more are allowed. */
  Found run(int limit) {
    level = 0;
    while (level < limit && best.size() < wanted) {
      level++;
      choose(level - 1, pieces.size() - 1, 0);
    }
    return new Found(new ArrayList<>(best), reaching, level, pieces.size(),
        new Combinations(pieces, block).upTo(level), lookups, below, above);
  }

  /** Adds so many more pieces, none thicker than the highest, and one last. */
  private void choose(int more, int highest, long sum) {
    if (sum > most || hopeless(more + 1, highest, sum)) {
      return;
    }
    if (more == 0) {
      lookups++;
      lastPiece(highest, sum);
      block.ifPresent(b -> lastBlock(b, sum));
      return;
    }
    for (int kind = highest; kind >= 0; kind--) {
      if (isLeft(kind)) {
        used[kind]++;
        choose(more - 1, kind, sum + pieces.get(kind).nano());
        used[kind]--;
      }
    }
  }

  private boolean isLeft(int kind) {
    return used[kind] < pieces.get(kind).count();
  }

  /** Whether so many more pieces neither reach the target nor come nearer to it than what was seen. */
  private boolean hopeless(int more, int highest, long sum) {
    long thickest = highest < 0 ? 0 : pieces.get(highest).nano();
    long last = block.map(b -> Math.max(thickest, b.height(b.most()))).orElse(thickest);
    long reach = sum + (more - 1) * thickest + last;
    return reach < least && below.isPresent() && reach <= below.get().totalNano();
  }

  private void lastPiece(int highest, long sum) {
    int kind = firstFrom(least - sum);
    for (int under = Math.min(kind - 1, highest); under >= 0; under--) {
      if (isLeft(under)) {
        offer(under, OptionalLong.empty(), sum + pieces.get(under).nano());
        break;
      }
    }
    for (; kind <= highest; kind++) {
      if (isLeft(kind)) {
        long total = sum + pieces.get(kind).nano();
        offer(kind, OptionalLong.empty(), total);
        if (total > most) {
          break;
        }
      }
    }
  }

  /** The thinnest kind of at least this thickness; the number of kinds where there is none. */
  private int firstFrom(long thickness) {
    int from = 0;
    int to = pieces.size();
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (pieces.get(middle).nano() < thickness) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }

  private void lastBlock(Block b, long sum) {
    long layers = Math.min(b.layersAtLeast(least - sum), b.most() + 1);
    if (layers > b.fewest()) {
      offer(-1, OptionalLong.of(layers - 1), sum + b.height(layers - 1));
    }
    for (; layers <= b.most(); layers++) {
      long total = sum + b.height(layers);
      offer(-1, OptionalLong.of(layers), total);
      if (total > most) {
        break;
      }
    }
  }

  /** Keeps a stack, made of what is used and a last piece or block, if it is better than what there is. */
  private void offer(int last, OptionalLong layers, long total) {
    if (total < least) {
      if (below.isEmpty() || total > below.get().totalNano()) {
        below = Optional.of(stack(last, layers));
      }
    } else if (total > most) {
      if (above.isEmpty() || total < above.get().totalNano()) {
        above = Optional.of(stack(last, layers));
      }
    } else {
      reaching++;
      if (best.size() < wanted || best.last().pieces() == level
          && Math.abs(total - target) <= Math.abs(best.last().errorNano())) {
        best.add(stack(last, layers));
        if (best.size() > wanted) {
          best.pollLast();
        }
      }
    }
  }

  private Stack stack(int last, OptionalLong layers) {
    List<Stack.Member> members = new ArrayList<>();
    for (int kind = pieces.size() - 1; kind >= 0; kind--) {
      int count = used[kind] + (kind == last ? 1 : 0);
      if (count > 0) {
        members.add(new Stack.Member(pieces.get(kind), count));
      }
    }
    long height = layers.isPresent() ? block.orElseThrow().height(layers.getAsLong()) : 0;
    return new Stack(target, members, layers, height);
  }
}
