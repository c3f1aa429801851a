package outrigger.shapes.campaign;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongFunction;

/**
 * Random expressions of every kind of operand, each held to the laws of {@link Laws}, its results proven and a sample of
 * them shown to the outside judge. {@code docs/reliability.md} tells what it found and how to run it.
 *
 * <p>Same seeds, same counts, whatever the number of threads; only the times differ.
 */
final class Campaign {
  /** Longest an expression with all its laws may take before it counts as hung, seconds. */
  private static final int HUNG = 900;

  private final Tally tally = new Tally();
  private final Map<Thread, Long> since = new ConcurrentHashMap<>();
  private final Optional<JudgeSample> judge;
  private final int threads;

  /**
   * @param judge program of the outside judge, or nothing
   */
  Campaign(int threads, Optional<String> judge) {
    this.threads = threads;
    this.judge = judge.map(path -> new JudgeSample(path, tally));
  }

  /** Runs {@code small|odd|close|facets|large FIRST COUNT [THREADS [JUDGED]]}; exits with 1 if anything failed. */
  public static void main(String[] args) throws Exception {
    long first = Long.parseLong(args[1]);
    int count = Integer.parseInt(args[2]);
    int threads = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    int judged = args.length > 4 ? Integer.parseInt(args[4]) : 0;
    Campaign campaign = new Campaign(threads, Optional.ofNullable(System.getenv("OUTRIGGER_JUDGE")));
    Tally tally = campaign.run(kind(args[0]), first, count, judged);
    System.out.printf("%s seeds %d to %d%n%s", args[0], first, first + count - 1, tally.text());
    System.exit(tally.failures().isEmpty() ? 0 : 1);
  }

  private static LongFunction<RandomExpression> kind(String name) {
    return switch (name) {
      case "small" -> RandomExpression::small;
      case "odd" -> RandomExpression::odd;
      case "close" -> RandomExpression::close;
      case "facets" -> RandomExpression::facets;
      case "large" -> RandomExpression::large;
      default -> throw new IllegalArgumentException(name + " is none of small, odd, close, facets, large");
    };
  }

  /**
   * Runs the seeds from {@code first} on.
   *
   * @param judged how many of the results, evenly spread, are shown to the outside judge, where there is one
   */
  Tally run(LongFunction<RandomExpression> expressions, long first, int count, int judged) throws Exception {
    AtomicLong next = new AtomicLong(first);
    List<Thread> workers = new ArrayList<>();
    int every = judged == 0 ? Integer.MAX_VALUE : Math.max(1, count / judged);
    for (int i = 0; i < threads; i++) {
      Thread worker = new Thread(() -> {
        for (long seed = next.getAndIncrement(); seed < first + count; seed = next.getAndIncrement()) {
          hold(expressions, seed, (seed - first) % every == 0 && judged > 0);
        }
      });
      worker.start();
      workers.add(worker);
    }
    watch(workers);
    if (judge.isPresent()) {
      judge.get().flush();
    }
    return tally;
  }

  /** Waits for all and interrupts what hangs. */
  private void watch(List<Thread> workers) throws InterruptedException {
    for (Thread worker : workers) {
      while (worker.isAlive()) {
        worker.join(1000);
        since.forEach((thread, start) -> {
          if (System.nanoTime() - start > HUNG * 1_000_000_000L) {
            thread.interrupt();
          }
        });
      }
    }
  }

  private void hold(LongFunction<RandomExpression> expressions, long seed, boolean show) {
    long start = System.nanoTime();
    since.put(Thread.currentThread(), start);
    try {
      Laws laws = new Laws(expressions.apply(seed), seed);
      Outcome whole = laws.hold();
      record(seed, laws, whole);
      if (show && judge.isPresent()) {
        judge.get().show(seed, whole);
      }
    } catch (CancellationException hung) {
      tally.fail(seed, "hung");
    } catch (RuntimeException | IOException | AssertionError e) {
      tally.fail(seed, e + " at " + (e.getStackTrace().length == 0 ? "?" : e.getStackTrace()[0]));
    } finally {
      since.remove(Thread.currentThread());
      tally.time(seed, (System.nanoTime() - start) / 1e9);
    }
  }

  private void record(long seed, Laws laws, Outcome whole) {
    tally.count("expressions", 1);
    tally.count("expressions: " + (whole.isRefused() ? "refused" : whole.mesh().isPresent() ? "sound" : "nothing left"), 1);
    tally.count("evaluations", laws.evaluated());
    for (int i = 0; i < laws.refusals().size(); i++) {
      Outcome refusal = laws.refusals().get(i);
      Outcome.Cause cause = refusal.refusal();
      if (cause == Outcome.Cause.OTHER) {
        tally.fail(seed, "refused without a documented cause: " + refusal.words());
      }
      boolean touch = FinerGrid.touches(laws.refused().get(i));
      String why = touch ? cause == Outcome.Cause.LINE ? "touch along a line" : "touch at a point or face"
          : cause == Outcome.Cause.ROUNDING ? "rounding does not settle" : "rounding closes a gap";
      tally.count("refusals: " + why, 1);
      if (!touch) {
        tally.note(seed, why + ": " + refusal.words());
      }
      tally.count(touch ? "refusals of touching operands" : "refusals of others", 1);
    }
    for (String law : laws.broken()) {
      tally.count("laws broken: " + law.replaceAll(":.*| Placement.*", ""), 1);
      if (law.startsWith("vol") || law.startsWith("points")) {
        tally.fail(seed, law);
      } else {
        tally.note(seed, law);
      }
    }
  }
}
