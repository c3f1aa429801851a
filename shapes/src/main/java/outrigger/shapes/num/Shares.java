package outrigger.shapes.num;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * A row of items cut into runs of about equal weight, for threads that are to have about equal work; one thread gets the
 * whole row as one run. An item heavier than a run has one to itself.
 */
public final class Shares {
  /** Runs a thread. Any small number would do: weights are estimates. */
  private static final int RUNS = 16;
  /** Items that are worth a thread when weighed. */
  private static final int AT_ONCE = 1 << 13;
  /** Items that go to a run together where there is room for all of them. Any small number would do. */
  private static final int BLOCK = 1 << 8;

  private final Workers workers;
  private final int[] ends;
  /** Numbers of the runs, heaviest first: one that comes late keeps all others waiting. */
  private final int[] order;

  /** Does one run, the items from one up to another, the last left out. */
  @FunctionalInterface
  public interface Run<R> {
    R on(int from, int to);
  }

  private Shares(Workers workers, int[] ends, int[] order) {
    this.workers = workers;
    this.ends = ends;
    this.order = order;
  }

  /** Cuts a row. */
  public static Shares of(Workers workers, int count, IntToLongFunction weight) {
    if (workers.threads() == 1 || count < 2) {
      return new Shares(workers, new int[] {count}, new int[] {0});
    }
    long[] blocks = new long[(count + BLOCK - 1) / BLOCK];
    workers.split(blocks.length, AT_ONCE / BLOCK, (from, to) -> {
      for (int i = from * BLOCK; i < Math.min(count, to * BLOCK); i++) {
        blocks[i / BLOCK] += weight.applyAsLong(i);
      }
    });
    long limit = Arrays.stream(blocks).sum() / ((long) RUNS * workers.threads()) + 1;
    // two runs side by side weigh more than the limit
    int[] ends = new int[Math.min(count, 2 * RUNS * workers.threads() + 1)];
    long[] weights = new long[ends.length];
    int runs = 0;
    for (int i = 0; i < count;) {
      boolean whole = i % BLOCK == 0 && weights[runs] + blocks[i / BLOCK] <= limit;
      long next = whole ? blocks[i / BLOCK] : weight.applyAsLong(i);
      if (i > 0 && weights[runs] + next > limit) {
        runs++;
      }
      weights[runs] += next;
      i = whole ? Math.min(count, i + BLOCK) : i + 1;
      ends[runs] = i;
    }
    int[] order = IntStream.rangeClosed(0, runs).boxed().sorted(Comparator.comparingLong(k -> -weights[k]))
        .mapToInt(k -> k).toArray();
    return new Shares(workers, Arrays.copyOf(ends, runs + 1), order);
  }

  /**
   * Does all runs; what comes of them stands in the order of the row.
   *
   * @param maker gives one thread what does runs
   */
  public <R> List<R> each(Supplier<Run<R>> maker) {
    List<R> done = workers.eachBy(order.length, () -> {
      Run<R> run = maker.get();
      IntFunction<R> piece = k -> run.on(order[k] == 0 ? 0 : ends[order[k] - 1], ends[order[k]]);
      return piece;
    });
    List<R> inOrder = new ArrayList<>(done);
    for (int k = 0; k < order.length; k++) {
      inOrder.set(order[k], done.get(k));
    }
    return inOrder;
  }

  /**
   * The same, where what comes of the runs is taken in the order of the row while others are still being done.
   */
  public <R> void eachInOrder(Supplier<Run<R>> maker, Consumer<R> taker) {
    workers.eachInOrder(ends.length, () -> {
      Run<R> run = maker.get();
      return k -> run.on(k == 0 ? 0 : ends[k - 1], ends[k]);
    }, taker);
  }
}
