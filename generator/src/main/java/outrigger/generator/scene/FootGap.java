package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.body.BodyMountParams;
import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.accessory.tray.TrayPlace;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.StandOff;
import outrigger.shapes.num.Placement;

/**
 * A part that bridges a bend or a step of its rail.
 *
 * @param part its name
 * @param off how far it stands off the rail
 */
public record FootGap(String part, StandOff off) {
  /** Less closes when screws are tightened, mm. */
  private static final double SEEN = 0.05;

  /** Those of parts at their places. */
  public static List<FootGap> of(Rails rails, List<Placed> parts) {
    List<FootGap> gaps = new ArrayList<>();
    for (Placed part : parts) {
      off(rails, part).filter(off -> off.mm() >= SEEN).ifPresent(off -> gaps.add(new FootGap(part.name(), off)));
    }
    return gaps;
  }

  private static Optional<StandOff> off(Rails rails, Placed part) {
    Map<String, Double> stated = part.part().stated();
    Placement pose = part.pose();
    if (part.record() instanceof BodyMountParams p) {
      boolean isOutboard = p.mounting() == Mounting.OUTBOARD;
      double reach = stated.get("reach");
      double half = stated.get("flange-length") / 2;
      double middle = ((p.side() == Side.LEFT) == isOutboard ? 1 : -1) * stated.getOrDefault("flange-offset", 0.0);
      return Optional.of(rails.footOff(pose.x(0, reach, 0), isOutboard ? reach : -reach, middle - half, middle + half));
    }
    if (part.record() instanceof TrayParams p && p.place() != TrayPlace.BETWEEN) {
      double inner = (p.place() == TrayPlace.LEFT ? -1 : 1) * p.width() / 2;
      return Optional.of(rails.flatOff(pose.x(0, inner, 0), p.length()));
    }
    return Optional.empty();
  }

  /** In words, one sentence. */
  public String words() {
    return part + ": the rail bends away from under it, " + Words.mm(Math.rint(off.mm() * 100) / 100) + " at x "
        + Words.number(Math.rint(off.x() * 10) / 10) + ": fill that with shims before you tighten its screws.";
  }
}
