package outrigger.shapes.num;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersTest {
  private static final int COUNT = 1_000;
  private static final List<Integer> SQUARES = IntStream.range(0, COUNT).mapToObj(i -> i * i).toList();

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8})
  void each_anyNumberOfThreads_keepsTheOrder(int threads) {
    assertEquals(SQUARES, Workers.of(threads).each(COUNT, i -> i * i));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8})
  void eachInOrder_anyNumberOfThreads_takesAllInOrder(int threads) {
    for (int round = 0; round < 20; round++) {
      List<Integer> taken = new ArrayList<>();
      Workers.of(threads).eachInOrder(COUNT, () -> i -> i * i, taken::add);
      assertEquals(SQUARES, taken);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void split_anyNumberOfThreads_coversTheRowOnce(int threads) {
    AtomicIntegerArray seen = new AtomicIntegerArray(COUNT);
    Workers.of(threads).split(COUNT, 7, (from, to) -> IntStream.range(from, to).forEach(seen::incrementAndGet));
    assertTrue(IntStream.range(0, COUNT).allMatch(i -> seen.get(i) == 1));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void shares_unlikeWeights_coverTheRowInOrder(int threads) {
    Shares shares = Shares.of(Workers.of(threads), COUNT, i -> i == 700 ? 100_000 : i % 5);
    List<Integer> joined = shares.<List<Integer>>each(() -> (from, to) -> IntStream.range(from, to).boxed().toList())
        .stream().flatMap(List::stream).toList();
    assertEquals(IntStream.range(0, COUNT).boxed().toList(), joined);
    List<Integer> taken = new ArrayList<>();
    shares.<List<Integer>>eachInOrder(() -> (from, to) -> IntStream.range(from, to).boxed().toList(), taken::addAll);
    assertEquals(joined, taken);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void each_piecesThatFail_throwsWhatTheFirstThrew(int threads) {
    RuntimeException thrown = new IllegalArgumentException("the first");
    for (int round = 0; round < 50; round++) {
      assertSame(thrown, assertThrows(RuntimeException.class, () -> Workers.of(threads).each(COUNT, i -> {
        if (i == 100) {
          throw thrown;
        } else if (i > 100) {
          throw new IllegalStateException("a later one");
        }
        return i;
      })));
    }
  }

  @Test
  void each_interrupted_stopsAllThreads() throws InterruptedException {
    CountDownLatch working = new CountDownLatch(2);
    CountDownLatch stopped = new CountDownLatch(2);
    AtomicLong ended = new AtomicLong();
    Thread caller = new Thread(() -> {
      assertThrows(CancellationException.class, () -> Workers.of(2).each(2, i -> {
        working.countDown();
        while (!Thread.currentThread().isInterrupted()) {
          Thread.onSpinWait();
        }
        stopped.countDown();
        return i;
      }));
      ended.set(Thread.currentThread().isInterrupted() ? 1 : 0);
    });
    caller.start();
    working.await();
    caller.interrupt();
    assertTrue(stopped.await(1, TimeUnit.SECONDS));
    caller.join();
    assertEquals(1, ended.get(), "the interrupt stays set");
  }

  @Test
  void from_smallSize_leavesOneThread() {
    assertEquals(1, Workers.of(4).from(100, 99).threads());
    assertEquals(4, Workers.of(4).from(100, 100).threads());
  }
}
