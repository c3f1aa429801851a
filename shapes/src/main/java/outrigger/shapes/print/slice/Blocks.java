package outrigger.shapes.print.slice;

import java.util.List;
import outrigger.shapes.num.Workers;

/** Work over a row of numbers, cut into blocks that several threads may take; results stay in order. */
public final class Blocks {
  /** Blocks a row is cut into: enough to keep cores busy, few enough to keep what each of them needs small. */
  private static final int BLOCKS = 16;
  /** Fewer numbers are not worth a block, which looks at all facets once. */
  private static final int LEAST = 12;

  private Blocks() {}

  /** What is done with the numbers from one up to another, the last left out. */
  @FunctionalInterface
  public interface Work<T> {
    List<T> on(int from, int to);
  }

  /** All results in order, the same whatever the number of threads. */
  public static <T> List<T> each(Workers workers, int count, Work<T> work) {
    int size = Math.max(LEAST, (count + BLOCKS - 1) / BLOCKS);
    return workers.each((count + size - 1) / size, block -> work.on(block * size, Math.min(count, (block + 1) * size)))
        .stream().flatMap(List::stream).toList();
  }
}
