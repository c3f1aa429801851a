package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.truck.Placed;
import outrigger.presets.Nut;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Placement;

/**
 * A box round a screw, its head or its nut on the truck: what things laid near it keep clear of; mm, truck axes.
 *
 * @param rear least x
 * @param front greatest x
 * @param right least y
 * @param left greatest y
 * @param low least z
 * @param high greatest z
 */
public record ScrewRoom(double rear, double front, double right, double left, double low, double high) {
  private static final double ACROSS_CORNERS = 2 / Math.sqrt(3);

  /** Boxes round the shortest screws that hold a part, with heads and loose nuts; none of a part of a set. */
  public static List<ScrewRoom> of(Placed part, Shelf shelf) {
    List<ScrewRoom> rooms = new ArrayList<>();
    for (Joint joint : part.part().fixings().joints()) {
      if (joint.oneOf().isEmpty()) {
        for (ScrewPlace place : joint.places()) {
          rooms.addAll(of(joint, place, part.pose(), shelf));
        }
      }
    }
    return rooms;
  }

  private static List<ScrewRoom> of(Joint joint, ScrewPlace place, Placement pose, Shelf shelf) {
    List<ScrewRoom> rooms = new ArrayList<>();
    rooms.add(round(place, 0, joint.shortestSold(), joint.screw().diameter() / 2, pose));
    if (!joint.screw().isCountersunk()) {
      rooms.add(round(place, -joint.screw().headHeight(), 0, joint.screw().headDiameter() / 2, pose));
    }
    Optional<Nut> nut = shelf.items(Nut.class).stream().filter(n -> n.name().equals(joint.screw().size())).findFirst();
    if (joint.thread().isLooseNut() && nut.isPresent()) {
      rooms.add(round(place, joint.mostGrip(), joint.mostGrip() + nut.get().height(),
          nut.get().acrossFlats() * ACROSS_CORNERS / 2, pose));
    }
    return rooms;
  }

  /** Round a post along a screw, by where it begins and ends. */
  private static ScrewRoom round(ScrewPlace place, double from, double to, double radius, Placement pose) {
    ScrewPlace a = place.along(from);
    ScrewPlace b = place.along(to);
    double[] one = {pose.x(a.x(), a.y(), a.z()), pose.y(a.x(), a.y(), a.z()), pose.z(a.x(), a.y(), a.z())};
    double[] two = {pose.x(b.x(), b.y(), b.z()), pose.y(b.x(), b.y(), b.z()), pose.z(b.x(), b.y(), b.z())};
    double[] aside = new double[one.length];
    for (int i = 0; i < one.length; i++) {
      double way = (two[i] - one[i]) / (to - from);
      aside[i] = radius * Math.sqrt(Math.max(0, 1 - way * way));
    }
    return new ScrewRoom(Math.min(one[0], two[0]) - aside[0], Math.max(one[0], two[0]) + aside[0],
        Math.min(one[1], two[1]) - aside[1], Math.max(one[1], two[1]) + aside[1],
        Math.min(one[2], two[2]) - aside[2], Math.max(one[2], two[2]) + aside[2]);
  }
}
