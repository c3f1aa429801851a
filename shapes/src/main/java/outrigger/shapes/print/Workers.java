package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Spreads pieces of work over threads; results in the order of the pieces, whatever the number of threads. */
public final class Workers {
  private final int threads;

  private Workers(int threads) {
    this.threads = threads;
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

  /**
   * Does pieces 0 to {@code count} - 1 and collects what comes of them in that order. Give pieces of a millisecond or
   * more, cut the same way whatever the number of threads.
   *
   * @throws CancellationException if the calling thread is interrupted
   */
  public <R> List<R> each(int count, IntFunction<R> piece) {
    if (threads == 1 || count < 2) {
      List<R> results = new ArrayList<>(count);
      for (int i = 0; i < count; i++) {
        stopIfInterrupted();
        results.add(piece.apply(i));
      }
      return results;
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, count), Workers::daemon);
    try {
      return collect(pool, count, piece);
    } finally {
      pool.shutdownNow();
    }
  }

  private static <R> List<R> collect(ExecutorService pool, int count, IntFunction<R> piece) {
    List<Callable<R>> tasks = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      int index = i;
      tasks.add(() -> piece.apply(index));
    }
    try {
      List<R> results = new ArrayList<>(count);
      for (Future<R> future : pool.invokeAll(tasks)) {
        results.add(future.get());
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted while a part was being measured");
    } catch (ExecutionException e) {
      throw rethrown(e.getCause());
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "outrigger-gauge");
    thread.setDaemon(true);
    return thread;
  }

  private static void stopIfInterrupted() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while a part was being measured");
    }
  }

  private static RuntimeException rethrown(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException e ? e : new IllegalStateException(cause);
  }
}
