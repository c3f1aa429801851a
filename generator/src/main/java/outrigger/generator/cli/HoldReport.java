package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import outrigger.generator.accessory.Words;
import outrigger.generator.magnet.Aside;
import outrigger.generator.magnet.Cautions;
import outrigger.generator.magnet.Facing;
import outrigger.generator.magnet.Force;
import outrigger.generator.magnet.Gap;
import outrigger.generator.magnet.Hold;
import outrigger.generator.magnet.HoldParams;
import outrigger.generator.magnet.Steel;

/** A hold in words. */
final class HoldReport {
  private static final double PERCENT = 100;
  private static final List<Double> WIDER = List.of(0.1, 0.2);

  private HoldReport() {}

  static List<String> lines(Hold hold) {
    List<String> lines = new ArrayList<>();
    lines.add(magnets(hold));
    lines.add(gap(hold.gap()));
    lines.add(pull(hold));
    lines.add(sensitivity(hold));
    hold.steel().ifPresent(steel -> lines.add(steel(hold, steel)));
    if (hold.given().facing() == Facing.MAGNET) {
      lines.add("Poles: the faces that meet must be one N and one S; otherwise they push each other off as hard.");
    }
    lines.add("");
    lines.add(needed(hold));
    lines.add(verdict(hold));
    lines.add(sideways(hold));
    lines.add(jolt(hold.aside()));
    Force hand = hold.hand();
    lines.add("By hand, straight off all mounts at once: about " + newton(hand.middle()) + ", at most "
        + newton(hand.greatest()) + "; tilted off, less.");
    lines.add("");
    lines.addAll(HoldTable.lines(hold));
    lines.add("");
    Cautions.of(hold).forEach(caution -> lines.add("caution: " + caution));
    return lines;
  }

  private static String magnets(Hold hold) {
    HoldParams p = hold.given();
    String one = stack(p.stack(), p.magnet().name(), hold.grade().name());
    String other = p.facing() == Facing.STEEL ? "steel"
        : stack(p.bodyStack(), p.bodyMagnet().name(), hold.bodyGrade().name());
    return one + " against " + other + " at " + Words.number(p.temperature()) + " degrees C";
  }

  private static String stack(int count, String name, String grade) {
    return (count == 1 ? "" : count + " x ") + name + " (" + grade + ")";
  }

  private static String gap(Gap gap) {
    String parts = gap.parts().stream().map(part -> part.name() + " " + Words.number(part.mm()))
        .collect(Collectors.joining(", "));
    String slack = gap.slack() == 0 ? "" : ", " + Words.number(gap.least()) + " to " + Words.mm(gap.greatest())
        + " as layers round the pockets";
    return "Gap " + Words.mm(gap.nominal()) + slack + (parts.isEmpty() ? "." : ": " + parts + ".");
  }

  private static String pull(Hold hold) {
    Force force = hold.force();
    return "Pull " + newton(force.middle()) + ", " + number(force.least()) + " to " + newton(force.greatest())
        + " by grade; with the layers " + number(hold.reach().least()) + " to " + newton(hold.reach().greatest()) + ".";
  }

  private static String sensitivity(Hold hold) {
    double now = hold.force().middle();
    String wider = WIDER.stream().map(more -> {
      double then = hold.pull().at(hold.gap().nominal() + more).middle();
      return Words.mm(more) + " more gap: " + newton(then)
          + String.format(Locale.ROOT, " (%+.0f %%)", (then / now - 1) * PERCENT);
    }).collect(Collectors.joining("; "));
    return wider + "." + (hold.risesSomewhere()
        ? " These discs differ in size: somewhere in the table the pull grows as the gap opens." : "");
  }

  private static String steel(Hold hold, Steel steel) {
    return "Steel: soft, flat, at least " + number(steel.thickness()) + " mm thick and " + Words.mm(steel.width())
        + " wide for this pull" + (hold.isSteelEnough() ? "." : "; what is given is less and holds less.");
  }

  private static String needed(Hold hold) {
    HoldParams p = hold.given();
    return "Needed " + newton(hold.load().each()) + " a mount: " + Words.number(p.mass()) + " g, "
        + Words.number(p.shock()) + " times its weight, on " + p.mounts() + (p.mounts() == 1 ? " mount." : " mounts.");
  }

  private static String verdict(Hold hold) {
    String counted = "Counted on " + newton(hold.counted()) + " a mount, " + Words.number(hold.given().derating())
        + " of the weakest pull: margin " + margin(hold);
    if (hold.holds()) {
      return counted + ", it holds.";
    }
    if (!hold.isSteelEnough()) {
      return counted + ", but not with this steel: take thicker or wider steel, or a magnet.";
    }
    return counted + ", IT DOES NOT HOLD. " + hold.mountsThatDo()
        + " such mounts would; or close the gap, or take larger magnets or a longer stack.";
  }

  private static String sideways(Hold hold) {
    Aside aside = hold.aside();
    HoldParams p = hold.given();
    String centring = p.facing() == Facing.STEEL ? "; steel does not pull the body back to its place"
        : "; " + Words.mm(p.offset()) + " aside the pair pulls back with " + newton(aside.centring())
            + (aside.along() < 0 ? " and pushes the body off" : "");
    return "Sideways: friction " + newton(aside.friction()) + " a mount" + centring + ".";
  }

  private static String jolt(Aside aside) {
    return "The same jolt from the side is " + newton(aside.needed()) + " a mount: "
        + (aside.needsPin() ? "add a locating pin." : "that is enough.");
  }

  /** Rounded down, so that what does not hold never reads as 1. */
  private static String margin(Hold hold) {
    return number(Math.floor(PERCENT * hold.margin()) / PERCENT);
  }

  static String number(double newton) {
    return String.format(Locale.ROOT, "%.2f", newton);
  }

  private static String newton(double newton) {
    return number(newton) + " N";
  }
}
