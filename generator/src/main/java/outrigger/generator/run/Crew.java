package outrigger.generator.run;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Does the same to every item of a list on several threads; results in the order of the list. */
final class Crew {
  private final int threads;

  /** @param threads at least 1 */
  Crew(int threads) {
    this.threads = threads;
  }

  <T, R> List<R> each(List<T> items, Function<T, R> work) {
    if (threads == 1 || items.size() < 2) {
      List<R> results = new ArrayList<>();
      for (T item : items) {
        results.add(work.apply(item));
      }
      return results;
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, items.size()), task -> {
      Thread thread = new Thread(task, "outrigger-worker");
      thread.setDaemon(true);
      return thread;
    });
    try {
      List<Callable<R>> tasks = new ArrayList<>();
      items.forEach(item -> tasks.add(() -> work.apply(item)));
      List<R> results = new ArrayList<>();
      for (Future<R> future : pool.invokeAll(tasks)) {
        results.add(future.get());
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making parts", e);
    } catch (ExecutionException e) {
      throw rethrown(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  /** What a task threw, to be thrown on. */
  static RuntimeException rethrown(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException e ? e : new IllegalStateException(cause);
  }
}
