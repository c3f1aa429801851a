package outrigger.generator.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.body.BodyMountParams;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.accessory.pad.BodyPadParams;
import outrigger.generator.accessory.spacer.SpacerParams;
import outrigger.generator.accessory.spacer.SpacerPose;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.accessory.tray.TrayPlace;
import outrigger.generator.fit.Site;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.param.ParamValues;
import outrigger.generator.plan.Plan;
import outrigger.generator.scene.Poses;
import outrigger.generator.truck.BumperParams;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Rails;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;

/** Puts parts where they go on the truck; axes of both stand in {@code accessory} and {@code truck}. */
final class Placing {
  /** Spacings this near are the same, mm. */
  private static final double SAME = 0.01;

  private final Plan plan;
  private final TruckFit fit;
  private final Rails rails;
  private final List<Placed> placed = new ArrayList<>();
  private final List<String> unplaced = new ArrayList<>();
  /** y of magnets by the names of their sites, mm. */
  private final Map<String, Double> magnets = new HashMap<>();

  Placing(Plan plan, TruckFit fit, List<Draft> drafts) {
    this.plan = plan;
    this.fit = fit;
    this.rails = fit.truck().rails();
    drafts.forEach(this::magnet);
    drafts.forEach(this::place);
  }

  /** Where a mount's magnet comes to lie: over a bend of the rail its foot stands off, and what faces it follows. */
  private void magnet(Draft draft) {
    Record record = draft.request().values().resolve(draft.request().name(), plan.shelf()).record();
    if (record instanceof BodyMountParams mount) {
      draft.parts().forEach(part -> site(mount).ifPresent(site -> pose(draft, part, record).ifPresent(pose ->
          magnets.put(site.name(), pose.y(0, part.stated().get("reach"), 0)))));
    }
  }

  List<Placed> placed() {
    return placed;
  }

  /** Names of parts of which the plan does not say where they go, or of which one of a set is used. */
  List<String> unplaced() {
    return unplaced;
  }

  private void place(Draft draft) {
    Record record = draft.request().values().resolve(draft.request().name(), plan.shelf()).record();
    for (Part part : draft.parts()) {
      Optional<Placement> pose = pose(draft, part, record);
      if (pose.isPresent()) {
        ParamValues<?> values = draft.request().values();
        placed.add(new Placed(draft.name(part), draft.request().accessory().kind(), part, values, record, pose.get()));
      } else {
        unplaced.add(draft.name(part));
      }
    }
  }

  private Optional<Placement> pose(Draft draft, Part part, Record record) {
    if (record instanceof BodyMountParams mount) {
      return site(mount).map(site -> Poses.bodyMount(rails, site.x(), site.side(), mount.mounting(), part.stated()));
    }
    if (record instanceof BodyPadParams) {
      return fit.sites().stream().filter(site -> draft.request().site().equals(Optional.of(site.name()))).findFirst()
          .map(site -> Poses.bodyPad(site.x(), magnets.getOrDefault(site.name(), site.y()), fit.heights().get(site).floor()));
    }
    if (record instanceof TrayParams tray) {
      return draft.request().at().filter(x -> fits(x, tray)).map(x -> tray(x, tray));
    }
    if (record instanceof SpacerParams spacer && spacer.set().isEmpty()) {
      return fit.truck().bumper().map(bumper -> spacer(bumper.record(), spacer));
    }
    return Optional.empty();
  }

  private Optional<Site> site(BodyMountParams mount) {
    return fit.sites().stream().filter(site -> site.side() == mount.side()
        && mount.rail().name().equals("truck-" + site.mount().record().name())).findFirst();
  }

  /** Whether a tray is made for these rails there, and not for another chassis. */
  private boolean fits(double x, TrayParams p) {
    double here = rails.narrowest(x - p.length() / 2, x + p.length() / 2);
    return p.place() != TrayPlace.BETWEEN || Math.abs(p.railSpacing() - here) <= Math.max(p.clearance(), SAME);
  }

  private Placement tray(double x, TrayParams p) {
    return p.place() == TrayPlace.BETWEEN ? Poses.trayBetween(x, p.drop())
        : Poses.trayOutboard(rails, x, p.place() == TrayPlace.LEFT ? Side.LEFT : Side.RIGHT, p.length(),
            p.width(), p.drop());
  }

  private static Placement spacer(BumperParams bumper, SpacerParams p) {
    double seat = bumper.seat().mm();
    return p.pose() == SpacerPose.FLAT ? Poses.flatSpacer(seat, bumper.z())
        : Placement.move(0, 0, -p.width() / 2).then(Placement.turn(Axis.Z, 90)).then(Placement.move(seat, 0, bumper.z()));
  }
}
