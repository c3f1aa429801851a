package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.Sort;
import outrigger.generator.truck.RailChange;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Rails;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** The left rail as a solid in truck axes, without its holes; the right one mirrors it. */
final class RailShapes {
  /** How far stretches lie in each other at a step, mm: less than any clearance. */
  private static final double LAP = 0.1;

  private final Rails rails;
  private final RailParams p;

  RailShapes(Rails rails) {
    this.rails = rails;
    this.p = rails.params();
  }

  List<Element> elements() {
    Solid left = left();
    return List.of(Element.of("rail left", Sort.RAIL, left), Element.of("rail right", Sort.RAIL, left.mirror(Axis.Y)));
  }

  /** A stretch between two places, the section at each end. */
  private record Stretch(double front, double rear, Rails.Station ahead, Rails.Station behind) {}

  private Solid left() {
    List<Solid> pieces = new ArrayList<>();
    for (Stretch stretch : stretches()) {
      double outer = rails.thickness();
      pieces.add(band(stretch, 0, p.web(), 0, 1, 0));
      if (p.form() != RailForm.PLATE) {
        double inner = p.form() == RailForm.BOX ? 0 : outer - p.flange();
        pieces.add(band(stretch, inner, outer, 0, 0, -p.web()));
        pieces.add(band(stretch, inner, outer, p.web(), 1, 0));
      }
      if (p.form() == RailForm.BOX) {
        pieces.add(band(stretch, outer - p.web(), outer, 0, 1, 0));
      }
    }
    return Solid.union(pieces);
  }

  private List<Stretch> stretches() {
    List<Stretch> all = new ArrayList<>();
    List<Double> places = new ArrayList<>(List.of(p.front()));
    rails.stations().stream().map(Rails.Station::x).filter(x -> x < p.front() && x > p.rear()).forEach(places::add);
    places.add(p.rear());
    for (int i = 0; i + 1 < places.size(); i++) {
      Rails.Station ahead = rails.at(places.get(i));
      Rails.Station behind = rails.at(places.get(i + 1));
      if (p.change() == RailChange.STEP) {
        ahead = rails.at((places.get(i) + places.get(i + 1)) / 2);
        behind = ahead;
      }
      all.add(new Stretch(places.get(i), places.get(i + 1), ahead, behind));
    }
    return p.change() == RailChange.STEP ? lapped(all) : all;
  }

  /** At a step the narrower stretch reaches a little into the wider one: rails there are one piece, not an edge apart. */
  private static List<Stretch> lapped(List<Stretch> stretches) {
    List<Stretch> all = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      Stretch s = stretches.get(i);
      boolean forward = i > 0 && s.ahead.spacing() < stretches.get(i - 1).ahead.spacing();
      boolean rearward = i + 1 < stretches.size() && s.ahead.spacing() < stretches.get(i + 1).ahead.spacing();
      all.add(new Stretch(s.front + (forward ? LAP : 0), s.rear - (rearward ? LAP : 0), s.ahead, s.behind));
    }
    return all;
  }

  /**
   * What lies between two distances outward of the web's inner face.
   *
   * @param up how far its top lies over the lower edge where {@code low} counts from there; else 0
   * @param low 1 where its bottom is the lower edge, 0 where it lies at {@code bottom}
   */
  private static Solid band(Stretch s, double from, double to, double up, int low, double bottom) {
    double front = s.ahead.spacing() / 2;
    double rear = s.behind.spacing() / 2;
    double lowFront = low == 1 ? -s.ahead.height() : bottom;
    double lowRear = low == 1 ? -s.behind.height() : bottom;
    double highFront = up > 0 ? lowFront + up : 0;
    double highRear = up > 0 ? lowRear + up : 0;
    Profile plan = Profile.polygon(s.rear, rear + from, s.front, front + from, s.front, front + to, s.rear, rear + to);
    Prism block = Prism.of(plan, Math.min(lowFront, lowRear), Math.max(highFront, highRear));
    if (lowFront == lowRear) {
      return block;
    }
    double near = Math.min(front, rear) + from - 1;
    double far = Math.max(front, rear) + to + 1;
    Profile side = Profile.polygon(s.rear, lowRear, s.front, lowFront, s.front, highFront, s.rear, highRear);
    return Solid.common(block, Prism.of(side, -far, -near).turn(Axis.X, 90));
  }
}
