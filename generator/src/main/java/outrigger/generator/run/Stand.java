package outrigger.generator.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import outrigger.generator.accessory.body.BodyMountParams;
import outrigger.generator.accessory.pad.BodyPadParams;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.clash.ClashCheck;
import outrigger.generator.clash.Meshed;
import outrigger.generator.drive.Drive;
import outrigger.generator.drive.Vehicle;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.layout.Laid;
import outrigger.generator.load.Balance;
import outrigger.generator.load.Bent;
import outrigger.generator.load.Mass;
import outrigger.generator.load.Post;
import outrigger.generator.load.Strength;
import outrigger.generator.load.Tab;
import outrigger.generator.plan.Plan;
import outrigger.generator.scene.FootGap;
import outrigger.generator.scene.RailHole;
import outrigger.generator.scene.RailHoles;
import outrigger.generator.scene.Scene;
import outrigger.generator.truck.ItemParams;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.TruckParams;
import outrigger.presets.Material;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Placement;

/** Works out how a truck stands. */
final class Stand {
  /** Pairs nearer than this are listed, mm. */
  private static final double NEAR = 1;
  /** Where the plan says nothing: the chassis weighs in the middle of the wheelbase, so far below the rails' tops, mm. */
  private static final double CHASSIS_BELOW = 10;
  private static final String PLA = "PLA";
  private static final double GRAVITY = 9.80665;
  private static final double PER_THOUSAND = 1000;

  private final TruckFit fit;
  private final Drawn drawn;
  private final Placing placing;
  private final List<Laid> laid;
  private final Map<String, Placed> parts;
  private final Scene scene;
  private final List<RailHole> drilling;
  private final Material material;

  Stand(TruckFit fit, Drawn drawn, HardwareList hardware, List<Laid> laid) {
    Plan plan = drawn.plan();
    this.fit = fit;
    this.drawn = drawn;
    this.placing = new Placing(plan, fit, drawn.drafts());
    this.laid = laid;
    this.parts = placing.placed().stream().collect(Collectors.toMap(Placed::name, Function.identity()));
    this.scene = Scene.of(fit.truck(), placing.placed(), hardware.screws().joints(), laid, plan.shelf());
    this.drilling = RailHoles.of(fit.truck(), placing.placed(), hardware.screws().joints(), plan.shelf());
    this.material = plan.material().orElseGet(() -> plan.shelf().get(Material.class, PLA));
    placing.placed().parallelStream().forEach(part -> drawn.proof(part.part()));
  }

  Standing standing() {
    TruckParams truck = fit.truck().truck().record();
    Balance balance = Balance.of(masses(), truck);
    Optional<Drive> drive = fit.truck().drive().map(told -> Drive.of(told.record(), new Vehicle(balance.total(),
        -balance.centre().x(), balance.height(), balance.wheelbase(), balance.track())));
    return new Standing(ClashCheck.check(scene.elements(), scene.ways(), NEAR, meshed()), balance, weightless(), bent(),
        drive, drilling, FootGap.of(fit.truck().rails(), placing.placed()), placing.unplaced(), truck.scale());
  }

  private Map<String, Meshed> meshed() {
    return placing.placed().stream().collect(Collectors.toMap(Placed::name,
        part -> new Meshed(drawn.mesh(part.part()), part.pose())));
  }

  private List<Mass> masses() {
    List<Mass> masses = new ArrayList<>();
    TruckParams truck = fit.truck().truck().record();
    masses.add(new Mass("chassis", truck.chassisMass(),
        truck.chassisCentre().orElse(new Point(-truck.wheelbase() / 2, 0, -CHASSIS_BELOW))));
    masses.add(new Mass("body", fit.truck().body().record().mass(), fit.centre()));
    for (Laid item : laid) {
      Scene.floor(item, parts, fit.truck()).ifPresent(at -> masses.add(new Mass(item.item().name(), grams(item),
          new Point(at.x(), at.y(), at.z() + item.item().height() / 2))));
    }
    // What is glued into the body is weighed with it.
    for (Placed part : placing.placed().stream().filter(p -> !(p.record() instanceof BodyPadParams)).toList()) {
      Measures m = drawn.proof(part.part()).measures();
      Placement p = part.pose();
      masses.add(new Mass(part.name(), m.volume() / PER_THOUSAND * material.density(),
          new Point(p.x(m.centroidX(), m.centroidY(), m.centroidZ()), p.y(m.centroidX(), m.centroidY(), m.centroidZ()),
              p.z(m.centroidX(), m.centroidY(), m.centroidZ()))));
    }
    return masses;
  }

  /** Names of items whose mass nobody told. */
  private List<String> weightless() {
    List<String> names = new ArrayList<>(laid.stream().filter(item -> grams(item) == 0).map(item -> item.item().name())
        .toList());
    placing.placed().stream().filter(part -> part.record() instanceof TrayParams)
        .flatMap(part -> ((TrayParams) part.record()).items().stream()).forEach(item -> names.add(item.name()));
    return names;
  }

  private double grams(Laid item) {
    return fit.truck().items().stream().filter(told -> told.record().name().equals(item.item().name())).findFirst()
        .map(told -> told.record()).map(ItemParams::mass).orElse(0.0);
  }

  private List<Bent> bent() {
    List<Bent> bent = new ArrayList<>();
    Strength strength = Strength.of(material.name());
    double jolt = fit.truck().body().record().shock() * GRAVITY / PER_THOUSAND;
    double each = fit.truck().body().record().mass() * jolt / Math.max(1, fit.sites().size());
    for (Placed part : placing.placed()) {
      if (part.record() instanceof BodyMountParams) {
        post(part).bend(each, strength).ifPresent(bent::add);
      } else if (part.record() instanceof TrayParams tray) {
        double load = laid.stream().filter(item -> item.room().name().equals(part.name())).mapToDouble(this::grams).sum()
            + drawn.proof(part.part()).measures().volume() / PER_THOUSAND * material.density();
        Tab.of(part.name(), tray).ifPresent(tab -> bent.add(tab.bend(load * jolt, strength)));
      }
    }
    return bent;
  }

  private Post post(Placed part) {
    Map<String, Double> s = part.part().stated();
    double head = s.get("total-height");
    return new Post(part.name(), drawn.mesh(part.part()), s.get("flange-height"), head - s.get("pocket-depth"), 0,
        s.get("reach"), head);
  }
}
