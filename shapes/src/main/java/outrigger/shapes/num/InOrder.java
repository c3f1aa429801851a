package outrigger.shapes.num;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;

/** Takes results from several threads as they come and hands them on in their order, one at a time. */
final class InOrder<R> {
  private final AtomicReferenceArray<Optional<R>> waiting;
  private final Consumer<R> taker;
  private final Lock turn = new ReentrantLock();
  /** Number of the result whose turn it is; changed only by who has the lock. */
  private volatile int next;

  InOrder(int count, Consumer<R> taker) {
    waiting = new AtomicReferenceArray<>(count);
    this.taker = taker;
  }

  /** Hands on a result if it is its turn, and what waits behind it; if another thread is at that, that one does it. */
  void put(int number, R result) {
    waiting.set(number, Optional.ofNullable(result));
    // whoever gives up the lock looks again, so nothing that came meanwhile is left behind
    while (isNextWaiting() && turn.tryLock()) {
      try {
        while (isNextWaiting()) {
          int now = next;
          waiting.getAndSet(now, null).ifPresent(taker);
          next = now + 1;
        }
      } finally {
        turn.unlock();
      }
    }
  }

  private boolean isNextWaiting() {
    int n = next;
    return n < waiting.length() && waiting.get(n) != null;
  }
}
