package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.joint.Chosen;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.truck.HoleRow;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.ClearanceHole;
import outrigger.presets.Shelf;

/** Where the rails' webs need holes: which of them are there, and where to drill the others. */
public final class RailHoles {
  private static final String WEB = "web";
  private static final double HALF = 0.5;

  private RailHoles() {}

  /** One for each screw through a web, in the order of the joints. */
  public static List<RailHole> of(Truck truck, List<Placed> parts, List<Chosen> joints, Shelf shelf) {
    Map<String, Placed> byName = parts.stream().collect(Collectors.toMap(Placed::name, Function.identity()));
    List<RailHole> holes = new ArrayList<>();
    for (Chosen chosen : joints) {
      Placed part = byName.get(chosen.of().part());
      Joint joint = chosen.of().joint();
      if (part != null && joint.grip().stream().anyMatch(member -> member.name().equals(WEB))) {
        joint.places().forEach(place -> holes.add(hole(truck, part, joint, place.along(toWeb(joint)), shelf)));
      }
    }
    return holes;
  }

  /** From the plane a screw's length is measured from to the middle of the web. */
  private static double toWeb(Joint joint) {
    double along = 0;
    for (Member member : joint.grip()) {
      if (member.name().equals(WEB)) {
        return along + HALF * member.least();
      }
      along += member.least();
    }
    return along;
  }

  private static RailHole hole(Truck truck, Placed part, Joint joint, ScrewPlace at, Shelf shelf) {
    double x = round(part.pose().x(at.x(), at.y(), at.z()));
    double drop = round(-part.pose().z(at.x(), at.y(), at.z()));
    Side side = part.pose().y(at.x(), at.y(), at.z()) > 0 ? Side.LEFT : Side.RIGHT;
    double screw = joint.screw().diameter();
    RailHole.Existing nearest = RailHole.Existing.NONE;
    for (Told<HoleRow> told : truck.holes()) {
      for (int i = 0; i < told.record().count() && told.record().side().each().contains(side); i++) {
        RailHole.Existing one = RailHole.Existing.of(told.record(), i, x, drop, screw);
        nearest = !nearest.exists() || one.away() < nearest.away() ? one : nearest;
      }
    }
    double diameter = shelf.find(ClearanceHole.class, joint.screw().size()).map(ClearanceHole::medium).orElse(screw);
    return new RailHole(part.name(), side == Side.LEFT, joint.screw().size(), diameter, x, drop, nearest);
  }

  private static double round(double mm) {
    return Math.rint(mm * 100) / 100 + 0.0;
  }

  /** In words, one sentence for each part and rail. */
  public static List<String> lines(List<RailHole> holes) {
    Map<String, List<RailHole>> groups = new LinkedHashMap<>();
    holes.forEach(hole -> groups.computeIfAbsent(hole.part() + " " + hole.left(), key -> new ArrayList<>()).add(hole));
    return groups.values().stream().map(RailHoles::words).toList();
  }

  private static String words(List<RailHole> holes) {
    RailHole first = holes.get(0);
    String rail = first.left() ? "left rail" : "right rail";
    List<String> told = new ArrayList<>();
    List<RailHole> there = holes.stream().filter(RailHole::isThere).toList();
    List<RailHole> wanted = holes.stream().filter(hole -> !hole.isThere()).toList();
    if (!there.isEmpty()) {
      told.add("takes " + there.stream().map(hole -> "hole " + hole.nearest().number() + " of " + hole.nearest().row())
          .collect(Collectors.joining(", ")) + " in the " + rail);
    }
    if (!wanted.isEmpty()) {
      told.add("drill the " + rail + " " + Words.mm(first.diameter()) + " wide for " + first.screw() + " at "
          + wanted.stream().map(hole -> "x " + Words.number(hole.x()) + ", " + Words.number(hole.drop()) + " below its top"
              + near(hole)).collect(Collectors.joining("; at ")));
    }
    return first.part() + ": " + String.join("; ", told) + ".";
  }

  private static String near(RailHole hole) {
    RailHole.Existing there = hole.nearest();
    if (!there.exists()) {
      return "";
    }
    List<String> ways = new ArrayList<>();
    way(ways, there.ahead(), "ahead", "behind");
    way(ways, there.below(), "lower", "higher");
    String where = "hole " + there.number() + " of " + there.row() + ", " + String.join(" and ", ways);
    return hole.breaksIn() ? " (breaks into " + where + ": move it there)" : " (nearest: " + where + ")";
  }

  private static void way(List<String> ways, double mm, String more, String less) {
    if (round(mm) != 0) {
      ways.add(Words.mm(Math.abs(round(mm))) + " " + (mm < 0 ? less : more));
    }
  }
}
