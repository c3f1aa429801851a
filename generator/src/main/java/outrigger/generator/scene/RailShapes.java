package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.Sort;
import outrigger.generator.truck.RailChange;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.Rails;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * The rails as solids: between stations as high as at the higher of the two, a box without its hollow, without holes.
 */
final class RailShapes {
  private final Rails rails;

  RailShapes(Rails rails) {
    this.rails = rails;
  }

  List<Element> elements() {
    Solid left = left();
    return List.of(Element.of("rail left", Sort.RAIL, left), Element.of("rail right", Sort.RAIL, left.mirror(Axis.Y)));
  }

  private Solid left() {
    TreeSet<Double> ends = new TreeSet<>(List.of(rails.params().rear(), rails.params().front()));
    rails.stations().forEach(station -> ends.add(station.x()));
    List<Solid> pieces = new ArrayList<>();
    for (double rear : ends.headSet(rails.params().front())) {
      pieces.addAll(section(rear, ends.higher(rear)));
    }
    return pieces.size() == 1 ? pieces.get(0) : Solid.union(pieces);
  }

  private List<Solid> section(double rear, double front) {
    Rails.Station ahead = rails.at(front);
    Rails.Station behind = rails.params().change() == RailChange.STEP ? ahead : rails.at(rear);
    double height = Math.max(ahead.height(), behind.height());
    double web = rails.params().web();
    double thick = Poses.thickness(rails);
    List<Solid> solids = new ArrayList<>();
    solids.add(strip(rear, front, behind.spacing() / 2, ahead.spacing() / 2, thick, -height, 0));
    if (rails.params().form() == RailForm.CHANNEL) {
      double flange = rails.params().flange();
      double inward = flange - web;
      for (double low : new double[] {-web, -height}) {
        solids.add(strip(rear, front, behind.spacing() / 2 - inward, ahead.spacing() / 2 - inward, flange, low, low + web));
      }
    }
    return solids;
  }

  private static Solid strip(double rear, double front, double rearY, double frontY, double width, double low,
      double high) {
    return Prism.of(Profile.polygon(rear, rearY, front, frontY, front, frontY + width, rear, rearY + width), low, high);
  }
}
