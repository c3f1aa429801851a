package outrigger.shapes.num;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * Spreads pieces of work over threads; results in the order of the pieces, whatever the number of threads.
 *
 * <p>What a piece throws comes out as it is: of several that fail, that of the first. Interrupting the calling thread
 * interrupts all that work for it. Threads that have nothing to do end by themselves.
 */
public final class Workers {
  /** How long a thread waits for more work. A part's steps follow upon each other sooner. */
  private static final int IDLE_MS = 500;
  /** Pieces a thread that a row is cut into: some, for they take unlike times. Any small number would do. */
  private static final int PIECES = 4;

  private final int threads;
  /** Where more than one thread may be needed. */
  private final Optional<ExecutorService> pool;

  /** What is done with the numbers from one up to another, the last left out. */
  @FunctionalInterface
  public interface Range {
    void on(int from, int to);
  }

  private Workers(int threads) {
    this.threads = threads;
    pool = threads == 1 ? Optional.empty() : Optional.of(new ThreadPoolExecutor(0, Integer.MAX_VALUE, IDLE_MS,
        TimeUnit.MILLISECONDS, new SynchronousQueue<>(), Workers::daemon));
  }

  /** So many threads, at least 1; with 1 the caller does all. */
  public static Workers of(int threads) {
    if (threads < 1) {
      throw new IllegalArgumentException("threads is " + threads);
    }
    return new Workers(threads);
  }

  /** How many threads there are. */
  public int threads() {
    return threads;
  }

  /** These, where a size makes threads worth their while: from {@code least} on; below that, the caller alone. */
  public Workers from(int least, long size) {
    return threads == 1 || size >= least ? this : of(1);
  }

  /**
   * Does pieces 0 to {@code count} - 1 and collects what comes of them in that order. Give pieces of a millisecond or
   * more.
   *
   * @throws CancellationException if the calling thread is interrupted
   */
  public <R> List<R> each(int count, IntFunction<R> piece) {
    return eachBy(count, () -> piece);
  }

  /**
   * The same, each thread with tools of its own.
   *
   * @param maker gives one thread what does pieces, which may keep what it needs for the next
   */
  public <R> List<R> eachBy(int count, Supplier<IntFunction<R>> maker) {
    if (pool.isEmpty() || count < 2) {
      IntFunction<R> piece = maker.get();
      List<R> results = new ArrayList<>(count);
      for (int i = 0; i < count; i++) {
        Interrupt.check();
        results.add(piece.apply(i));
      }
      return results;
    }
    return new Run<>(count, maker).collect(pool.get(), Math.min(threads, count));
  }

  /**
   * The same, where what comes of the pieces is taken as they are done, but in their order and one at a time, by whichever
   * thread just has it.
   */
  public <R> void eachInOrder(int count, Supplier<IntFunction<R>> maker, Consumer<R> taker) {
    if (pool.isEmpty() || count < 2) {
      IntFunction<R> piece = maker.get();
      for (int i = 0; i < count; i++) {
        Interrupt.check();
        taker.accept(piece.apply(i));
      }
      return;
    }
    InOrder<R> inOrder = new InOrder<>(count, taker);
    eachBy(count, () -> {
      IntFunction<R> piece = maker.get();
      return i -> {
        inOrder.put(i, piece.apply(i));
        return i;
      };
    });
  }

  /** Does two things, side by side where there is more than one thread. */
  public void both(Runnable one, Runnable other) {
    each(2, i -> {
      (i == 0 ? one : other).run();
      return i;
    });
  }

  /**
   * Cuts a row of numbers from 0 to {@code count} - 1 into pieces and does them all. What one piece writes no other may
   * read.
   *
   * @param least how many numbers are worth a piece
   */
  public void split(int count, int least, Range work) {
    split(count, work, threads == 1 ? 1 : Math.max(1, Math.min(PIECES * threads, count / least)));
  }

  /** The same in as many pieces as there are threads: for work that looks at everything to do its part. */
  public void parts(int count, Range work) {
    split(count, work, threads);
  }

  private void split(int count, Range work, int pieces) {
    if (pieces == 1) {
      Interrupt.check();
      work.on(0, count);
      return;
    }
    each(pieces, i -> {
      work.on((int) ((long) count * i / pieces), (int) ((long) count * (i + 1) / pieces));
      return i;
    });
  }

  /** Some threads that take pieces in their order, each the next when it is done with one. */
  private static final class Run<R> {
    private final int count;
    private final Supplier<IntFunction<R>> maker;
    private final AtomicInteger next = new AtomicInteger();
    private final Object[] results;
    private final Throwable[] thrown;
    private volatile boolean failed;

    Run(int count, Supplier<IntFunction<R>> maker) {
      this.count = count;
      this.maker = maker;
      results = new Object[count];
      thrown = new Throwable[count];
    }

    /** All pieces before one that fails have begun, and end: so the first that fails is always found. */
    private void work() {
      IntFunction<R> piece = maker.get();
      for (int i = next.getAndIncrement(); i < count && !failed; i = next.getAndIncrement()) {
        try {
          Interrupt.check();
          results[i] = piece.apply(i);
        } catch (RuntimeException | Error e) {
          thrown[i] = e;
          failed = true;
        }
      }
    }

    /** The caller is one of the threads: it has no other to wait for before it begins. */
    @SuppressWarnings("unchecked")
    List<R> collect(ExecutorService pool, int threads) {
      List<Future<?>> others = new ArrayList<>();
      for (int i = 1; i < threads; i++) {
        others.add(pool.submit(this::work));
      }
      try {
        work();
        for (Future<?> other : others) {
          other.get();
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new CancellationException("interrupted while threads were working on a part");
      } catch (ExecutionException e) {
        throw rethrown(e.getCause());
      } finally {
        // ends them where this one was interrupted or failed; where all are done it does nothing
        others.forEach(other -> other.cancel(true));
      }
      for (int i = 0; failed && i < count; i++) {
        if (thrown[i] != null) {
          throw rethrown(thrown[i]);
        }
      }
      return (List<R>) Arrays.asList(results);
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "outrigger-worker");
    thread.setDaemon(true);
    return thread;
  }

  private static RuntimeException rethrown(Throwable thrown) {
    if (thrown instanceof Error error) {
      throw error;
    }
    return thrown instanceof RuntimeException e ? e : new IllegalStateException(thrown);
  }
}
