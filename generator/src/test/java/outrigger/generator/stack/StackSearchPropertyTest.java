package outrigger.generator.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Against every stack there is, made one by one, on small cases. */
class StackSearchPropertyTest {
  private static final long SEED = 20240611;
  private static final int CASES = 3000;

  @Test
  void run_randomCases_findsWhatTryingAllFinds() {
    Random random = new Random(SEED);
    int without = 0;
    int withNone = 0;
    for (int i = 0; i < CASES; i++) {
      String name = "seed " + SEED + ", case " + i;
      List<Piece> pieces = pieces(random);
      Optional<Block> block = random.nextBoolean() ? Optional.of(block(random)) : Optional.empty();
      long target = 1 + random.nextInt(60);
      long tolerance = random.nextInt(4);
      int limit = 1 + random.nextInt(4);
      int wanted = 1 + random.nextInt(6);
      Found found = new StackSearch(pieces, block, target, tolerance, wanted).run(limit);
      compare(name, found, all(pieces, block, target, limit), tolerance, limit, wanted);
      without += block.isEmpty() ? 1 : 0;
      withNone += found.answers().isEmpty() ? 1 : 0;
    }
    assertTrue(without > CASES / 4 && withNone > CASES / 20, without + " without a block, " + withNone + " with none");
  }

  private static List<Piece> pieces(Random random) {
    List<Piece> pieces = new ArrayList<>();
    int kinds = random.nextInt(6);
    for (int k = 0; k < kinds; k++) {
      int count = random.nextBoolean() ? Piece.ANY : random.nextInt(4);
      pieces.add(new Piece(Piece.Sort.SHIM, "piece " + k, List.of(), 1 + random.nextInt(25), 0, count));
    }
    return pieces;
  }

  private static Block block(Random random) {
    int fewest = random.nextInt(4);
    return new Block(1 + random.nextInt(4), 1 + random.nextInt(5), fewest, fewest + random.nextInt(8));
  }

  private static void compare(String name, Found found, List<Stack> all, long tolerance, int limit, int wanted) {
    List<Stack> reaching = all.stream().filter(s -> Math.abs(s.errorNano()) <= tolerance).sorted(Stack.BEST_FIRST)
        .toList();
    List<Stack> best = reaching.stream().limit(wanted).toList();
    assertEquals(best, found.answers(), name);
    for (int i = 1; i < best.size(); i++) {
      Stack before = found.answers().get(i - 1);
      Stack after = found.answers().get(i);
      assertTrue(before.pieces() < after.pieces() || before.pieces() == after.pieces()
          && Math.abs(before.errorNano()) <= Math.abs(after.errorNano()), name);
    }
    int looked = best.size() < wanted ? limit : best.get(wanted - 1).pieces();
    assertEquals(looked, found.pieces(), name);
    assertEquals(reaching.stream().filter(s -> s.pieces() <= looked).count(), found.reaching(), name);
    assertEquals(all.stream().filter(s -> s.pieces() <= looked).count(), found.combinations(), name);
    if (best.isEmpty()) {
      assertEquals(all.stream().mapToLong(Stack::errorNano).filter(e -> e < 0).max(), error(found.below()), name);
      assertEquals(all.stream().mapToLong(Stack::errorNano).filter(e -> e > 0).min(), error(found.above()), name);
    }
  }

  private static OptionalLong error(Optional<Stack> stack) {
    return stack.isPresent() ? OptionalLong.of(stack.get().errorNano()) : OptionalLong.empty();
  }

  /** Every stack of one piece to so many: each number of each kind, each height of the block. */
  private static List<Stack> all(List<Piece> pieces, Optional<Block> block, long target, int limit) {
    List<Piece> sorted = pieces.stream()
        .sorted((a, b) -> a.nano() != b.nano() ? Long.compare(b.nano(), a.nano()) : b.name().compareTo(a.name()))
        .toList();
    List<Stack> all = new ArrayList<>();
    counts(sorted, 0, limit, new ArrayList<>(), members -> {
      all.add(new Stack(target, members, OptionalLong.empty(), 0));
      block.ifPresent(b -> {
        for (long n = b.fewest(); n <= b.most(); n++) {
          all.add(new Stack(target, members, OptionalLong.of(n), b.first() + n * b.layer()));
        }
      });
    });
    all.removeIf(stack -> stack.pieces() == 0 || stack.pieces() > limit);
    assertEquals(all.size(), new HashSet<>(all).size());
    return all;
  }

  private static void counts(List<Piece> pieces, int kind, int limit, List<Stack.Member> chosen,
      Consumer<List<Stack.Member>> each) {
    if (kind == pieces.size()) {
      each.accept(List.copyOf(chosen));
      return;
    }
    counts(pieces, kind + 1, limit, chosen, each);
    for (int n = 1; n <= Math.min(limit, pieces.get(kind).count()); n++) {
      chosen.add(new Stack.Member(pieces.get(kind), n));
      counts(pieces, kind + 1, limit, chosen, each);
      chosen.remove(chosen.size() - 1);
    }
  }
}
