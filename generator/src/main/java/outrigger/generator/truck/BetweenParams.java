package outrigger.generator.truck;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import outrigger.generator.layout.Room;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;

/** Table {@code [between-rails]}: the space between the rails that is left to items. */
public record BetweenParams(
    @Param(min = -1000, max = 500, def = "20", help = "Where it ends in front: x.")
    double front,
    @Param(min = -1000, max = 500, def = "-170", help = "Where it ends behind: x.")
    double rear,
    @Param(max = 20, def = "0.5", help = "Gap to the rails, or to a channel's flanges, on each side.")
    double clearance,
    @Param(min = -200, max = 200, def = "-11", help = "z of what things lie on.")
    double level,
    @Param(min = 1, max = 300, def = "25", help = "Free height above that.")
    double height) {
  /** The table's key, and what an item calls it that may go there. */
  public static final String KEY = "between-rails";

  public BetweenParams {
    if (!(rear < front)) {
      throw new BadDimension("rear", "the space ends behind at " + mm(rear) + ", which is not behind its front end at "
          + mm(front), "Give the lesser x as rear.");
    }
  }

  /**
   * The room along the rails.
   *
   * @throws BadDimension where it runs past the rails, or they leave nothing between the gaps
   */
  public Room room(Rails rails) {
    if (!rails.reach(front) || !rails.reach(rear)) {
      boolean ahead = !rails.reach(front);
      throw new BadDimension(ahead ? "front" : "rear", "the space runs from " + mm(rear) + " to " + mm(front)
          + ", but the rails from " + mm(rails.params().rear()) + " to " + mm(rails.params().front()),
          "Keep " + (ahead ? "front" : "rear") + " between them.");
    }
    TreeSet<Double> ends = new TreeSet<>(List.of(rear, front));
    rails.stations().stream().map(Rails.Station::x).filter(x -> x > rear && x < front).forEach(ends::add);
    List<Room.Section> sections = new ArrayList<>();
    for (double from : ends.headSet(front)) {
      double to = ends.higher(from);
      double ahead = half(rails, to);
      // A step lies just ahead of its station, so the section behind one reaches up to it with its own width.
      double behind = rails.params().change() == RailChange.STEP ? ahead : half(rails, from);
      sections.add(new Room.Section(from, to, -behind, behind, -ahead, ahead));
    }
    return new Room(KEY, sections, height);
  }

  private double half(Rails rails, double x) {
    RailParams p = rails.params();
    double flanges = p.form() == RailForm.CHANNEL ? p.flange() - p.web() : 0;
    double half = rails.at(x).spacing() / 2 - flanges - clearance;
    if (!(half > 0)) {
      throw new BadDimension("clearance", "at " + mm(x) + " the rails stand " + mm(rails.at(x).spacing()) + " apart, and "
          + (flanges > 0 ? "flanges of " + mm(flanges) + " inward and " : "") + "gaps of " + mm(clearance)
          + " leave nothing between them", "Lower clearance, or end the space before it gets so narrow.");
    }
    return half;
  }

  private static String mm(double value) {
    return Texts.number(value, Unit.MM);
  }
}
