package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.Sort;
import outrigger.generator.clash.Spot;
import outrigger.generator.clash.ToolWay;
import outrigger.generator.joint.Chosen;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.ScrewPlace;
import outrigger.presets.Nut;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Screws of a joint as elements, and the ways of the tools to their heads. */
final class ScrewShapes {
  /** The member of a joint that is the rail. */
  private static final String WEB = "web";

  private final Chosen chosen;
  private final Placement pose;
  private final Shelf shelf;

  /** @param pose of the part that states the joint */
  ScrewShapes(Chosen chosen, Placement pose, Shelf shelf) {
    this.chosen = chosen;
    this.pose = pose;
    this.shelf = shelf;
  }

  private Joint joint() {
    return chosen.of().joint();
  }

  private Screw screw() {
    return joint().screw();
  }

  /**
   * Where each screw lies once tightened. A part is drawn in the middle of its play at the rail: a head on the rail stands
   * off by that.
   */
  private ScrewPlace place(int number) {
    Joint joint = joint();
    boolean onRail = joint.grip().get(0).name().equals(WEB);
    return joint.places().get(number).along(onRail ? (joint.leastGrip() - joint.mostGrip()) / 2 : 0);
  }

  private String name(int number) {
    return chosen.of().name() + " " + (number + 1);
  }

  List<Element> elements() {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < joint().count(); i++) {
      ScrewPlace place = place(i);
      if (!screw().isCountersunk()) {
        elements.add(element(i, Sort.HEAD,
            placed(Prism.of(Profile.post(screw().headDiameter()), -screw().headHeight(), 0), place)));
      }
      elements.add(element(i, Sort.SHANK, placed(shank(), place)));
    }
    return elements;
  }

  private Element element(int number, Sort sort, Solid solid) {
    return new Element(name(number) + " " + sort.word(), sort, name(number), Set.of(chosen.of().part()), solid);
  }

  /** The shank, with a loose nut behind what is clamped; a nut or insert held in the part is part of it. */
  private Solid shank() {
    Solid shank = Prism.of(Profile.post(screw().diameter()), 0, chosen.length());
    Optional<Nut> nut = shelf.items(Nut.class).stream().filter(n -> n.name().equals(screw().size())).findFirst();
    if (!joint().thread().isLooseNut() || nut.isEmpty()) {
      return shank;
    }
    double from = joint().mostGrip();
    return shank.join(Prism.of(Profile.hexagon(nut.get().acrossFlats()), from, from + nut.get().height()));
  }

  private Solid placed(Solid alongZ, ScrewPlace p) {
    Solid turned = p.dz() == 1 ? alongZ : p.dz() == -1 ? alongZ.turn(Axis.X, 180)
        : p.dy() != 0 ? alongZ.turn(Axis.X, p.dy() > 0 ? -90 : 90) : alongZ.turn(Axis.Y, p.dx() > 0 ? 90 : -90);
    return turned.move(p.x(), p.y(), p.z()).place(pose);
  }

  List<ToolWay> ways() {
    List<ToolWay> ways = new ArrayList<>();
    for (int i = 0; i < joint().count(); i++) {
      ScrewPlace p = place(i).along(screw().isCountersunk() ? 0 : -screw().headHeight());
      Spot head = new Spot(pose.x(p.x(), p.y(), p.z()), pose.y(p.x(), p.y(), p.z()), pose.z(p.x(), p.y(), p.z()));
      String name = name(i);
      Spot back = back(p);
      ways.add(screw().drive().equals("hexagon") ? ToolWay.hexagon(name, head, back, screw().driveSize())
          : ToolWay.driver(name, head, back, screw().headDiameter()));
    }
    return ways;
  }

  /** Away from the tip, in truck axes. */
  private Spot back(ScrewPlace p) {
    return new Spot(pose.tx() - pose.x(p.dx(), p.dy(), p.dz()), pose.ty() - pose.y(p.dx(), p.dy(), p.dz()),
        pose.tz() - pose.z(p.dx(), p.dy(), p.dz()));
  }
}
