package outrigger.generator.fit;

import java.util.List;
import java.util.Optional;
import outrigger.generator.stack.Spread;

/**
 * The height of a station, solved.
 *
 * @param chain every member with its length
 * @param solvedFor the member that was free; empty where none was
 * @param head height of the mount's head over the rails' tops as drawn, mm: its parameter {@code height}
 * @param layers what whole layers, and drawing it to the hundredth, make of it: printed less solved, mm
 * @param misfit sum less floor where nothing was free, mm
 * @param spread how far the floor may come out from where it was meant
 */
public record Height(StackUp chain, Optional<String> solvedFor, double head, double layers, double misfit, Spread spread) {
  /** Where the floor comes to lie, less where it was meant to, mm. */
  public double error() {
    return layers + misfit;
  }

  /** How far the body's disc lies below its pad's rim, mm: the mount's own lies 0.2 below; more gap is felt or paint. */
  public double padRecess() {
    double left = chain.member("gap").size().mm() - Heights.BELOW_HEAD;
    return Math.max(0, Math.min(Heights.BELOW_HEAD, Math.rint(left * 1e6) / 1e6));
  }

  /** The body's floor over the rails' tops by what stands there, mm. */
  public double floor() {
    return chain.members().stream().filter(m -> m.sign() > 0).mapToDouble(m -> m.size().mm()).sum();
  }

  /** The members in order. */
  public List<Member> members() {
    return chain.members();
  }
}
