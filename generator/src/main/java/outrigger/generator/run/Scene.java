package outrigger.generator.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.clash.Along;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.RailSolid;
import outrigger.generator.clash.Sort;
import outrigger.generator.clash.Spot;
import outrigger.generator.clash.ToolWay;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.Chosen;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.layout.Laid;
import outrigger.generator.truck.BetweenParams;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Point;
import outrigger.presets.Screw;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Everything that has a place on a truck: parts, rails, items, keep-outs, screws and the ways of tools to them. */
final class Scene {
  private static final String HEXAGON = "hexagon";
  /** The member of a joint that is the rail. */
  private static final String WEB = "web";

  private final TruckFit fit;
  private final List<Placed> placed;
  private final List<Element> elements = new ArrayList<>();
  private final Set<String> names = new HashSet<>();
  private final List<ToolWay> ways = new ArrayList<>();

  Scene(TruckFit fit, List<Placed> placed, List<Laid> laid, List<Chosen> joints) {
    this.fit = fit;
    this.placed = placed;
    placed.forEach(part -> add(Element.of(part.name(), Sort.PART, part.solid())));
    RailSolid.of(fit.truck().rails()).forEach(this::add);
    laid.forEach(item -> floor(item).ifPresent(at -> add(Element.of(item.item().name(), Sort.ITEM,
        box(item.length(), item.width(), item.item().height(), at)))));
    fit.truck().keepOuts().forEach(keepOut -> {
      Point low = keepOut.record().low();
      Point high = keepOut.record().high();
      add(Element.of(keepOut.record().name(), Sort.KEEP_OUT, box(high.x() - low.x(), high.y() - low.y(),
          high.z() - low.z(), new Spot((low.x() + high.x()) / 2, (low.y() + high.y()) / 2, low.z()))));
    });
    joints.forEach(this::screws);
  }

  /** Users may call two things alike; the later one gets a number. */
  private void add(Element element) {
    String name = element.name();
    for (int i = 2; !names.add(name); i++) {
      name = element.name() + " " + i;
    }
    String group = element.group().equals(element.name()) ? name : element.group();
    elements.add(new Element(name, element.sort(), group, element.seats(), element.solid()));
  }

  /** In the order of parts, rails, items, keep-outs, screws; no two of one name. */
  List<Element> elements() {
    return elements;
  }

  List<ToolWay> ways() {
    return ways;
  }

  private static Solid box(double length, double width, double height, Spot foot) {
    return Prism.of(Profile.rectangle(length, width), 0, height).move(foot.x(), foot.y(), foot.z());
  }

  /** Where the middle of an item's underside lies; empty where its tray has no place. */
  Optional<Spot> floor(Laid laid) {
    if (laid.room().name().equals(BetweenParams.KEY)) {
      return fit.truck().between().map(b -> new Spot(laid.x(), laid.y(), b.record().level()));
    }
    return placed.stream().filter(part -> part.name().equals(laid.room().name())).findFirst()
        .map(tray -> spot(tray.pose(), laid.x(), laid.y(), tray.part().stated().get("floor")));
  }

  private static Spot spot(Placement p, double x, double y, double z) {
    return new Spot(p.x(x, y, z), p.y(x, y, z), p.z(x, y, z));
  }

  private void screws(Chosen chosen) {
    Optional<Placed> part = placed.stream().filter(one -> one.name().equals(chosen.of().part())).findFirst();
    if (part.isPresent() && chosen.of().set().isEmpty()) {
      int number = 1;
      for (ScrewPlace place : chosen.of().joint().places()) {
        String name = chosen.of().name() + " " + number++;
        screw(name, part.get(), chosen, place);
      }
    }
  }

  private void screw(String name, Placed part, Chosen chosen, ScrewPlace place) {
    Screw screw = chosen.of().joint().screw();
    Spot tip = way(part.pose(), place);
    Spot back = new Spot(-tip.x(), -tip.y(), -tip.z());
    Spot under = spot(part.pose(), place.x(), place.y(), place.z()).along(back, gap(chosen.of().joint()));
    Solid shank = Prism.of(Profile.post(screw.diameter()), 0, chosen.length()).place(Along.from(under, tip));
    add(new Element(name + " shank", Sort.SHANK, name, Set.of(part.name()), shank));
    Spot top = under;
    if (!screw.isCountersunk()) {
      Solid head = Prism.of(Profile.post(screw.headDiameter()), 0, screw.headHeight()).place(Along.from(under, back));
      add(new Element(name + " head", Sort.HEAD, name, Set.of(part.name()), head));
      top = under.along(back, screw.headHeight());
    }
    ways.add(screw.drive().equals(HEXAGON) ? ToolWay.hexagon(name, top, back, screw.driveSize())
        : ToolWay.driver(name, top, back, screw.headDiameter()));
  }

  /**
   * How far a head on the rail stands off where it comes to lie once tightened: a part is drawn in the middle of its play.
   */
  private static double gap(Joint joint) {
    return joint.grip().get(0).name().equals(WEB) ? (joint.mostGrip() - joint.leastGrip()) / 2 : 0;
  }

  private static Spot way(Placement p, ScrewPlace place) {
    return new Spot(p.x(place.dx(), place.dy(), place.dz()) - p.tx(), p.y(place.dx(), place.dy(), place.dz()) - p.ty(),
        p.z(place.dx(), place.dy(), place.dz()) - p.tz());
  }
}
