package outrigger.generator.fit;

import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.Fault;
import outrigger.generator.stack.Spread;
import outrigger.generator.truck.BumperParams;
import outrigger.generator.truck.Told;
import outrigger.presets.Printer;

/**
 * The bumper's chain along X, solved: seat, spacer and bumper reach the face.
 *
 * @param spread how far its face may come out from where it must be
 */
public record Bumper(StackUp chain, Spread spread) {
  static final String SPACER = "spacer";
  private static final double MEASURED_OFF = 0.1;

  static StackUp chain(BumperParams p, Printer printer) {
    return new StackUp(List.of(Member.of("seat", 1, p.seat(), MEASURED_OFF, false),
        Member.of(SPACER, 1, p.spacer(), printer.layer() / 2, true), Member.of("depth", 1, p.depth(), MEASURED_OFF, false),
        Member.of("face", -1, p.face(), MEASURED_OFF, false)));
  }

  static Optional<Fault> fault(Told<BumperParams> told, StackUp chain) {
    List<String> free = chain.free().stream().map(Member::name).toList();
    if (free.size() > 1) {
      return Optional.of(told.fault(free.get(0), "the bumper's chain is under-determined: " + String.join(" and ", free)
          + " are all left to be solved", "Measure all but one of them."));
    }
    if (free.isEmpty() && Math.abs(chain.sum()) > chain.spread("").worst()) {
      return Optional.of(told.fault("face", "the bumper's chain is over-determined and its values fight: "
          + chain.words(1) + " miss the face at " + Words.mm(told.record().face().mm()) + " by "
          + Words.mm(Math.abs(chain.sum())), "Write solve for one of them, such as spacer."));
    }
    double spacer = chain.solved().member(SPACER).size().mm();
    if (spacer < 0) {
      return Optional.of(told.fault("face", "seat and bumper alone reach " + Words.mm(-spacer)
          + " past where the face must be, so no spacer fits", "The nearest face that works is "
          + Words.mm(told.record().face().mm() - spacer) + "."));
    }
    return Optional.empty();
  }

  /** Thickness of the spacer, mm. */
  public double spacer() {
    return chain.member(SPACER).size().mm();
  }
}
