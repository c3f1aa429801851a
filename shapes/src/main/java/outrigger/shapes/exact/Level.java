package outrigger.shapes.exact;

import java.util.concurrent.atomic.LongAdder;

/**
 * What an exact decision rested on in the end.
 *
 * <p>Decisions are counted only in a process started with {@code -Doutrigger.levels=true}, for the benchmarks. In any other
 * the condition is a constant, which the compiler drops together with the call.
 */
enum Level {
  /** Doubles with a bound on their error. */
  DOUBLES,
  /** Whole numbers of 64 or 128 bits. */
  WORDS,
  /** Whole numbers of any length. */
  BIG;

  static final boolean COUNTED = Boolean.getBoolean("outrigger.levels");

  private final LongAdder decisions = new LongAdder();

  /** Counts a decision, where decisions are counted. */
  void note() {
    if (COUNTED) {
      decisions.increment();
    }
  }

  /** Decisions counted since this was asked last. */
  long take() {
    return decisions.sumThenReset();
  }
}
