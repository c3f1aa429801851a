package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;

/**
 * The space between the rails that is left to things, straight between stations, stepped where two have one x; mm.
 *
 * @param spacing stations from rear to front or from front to rear; none for no such space
 */
public record RailsRoom(
    @Param(def = "", help = "Clear width between the rails from station to station, each X:WIDTH with x forward of the "
        + "front axle, such as -180:30, -60:36.4; two stations at one x make a step.")
    List<RailStation> spacing,

    @Param(max = 20, def = "0.5", help = "Gap to the rails on each side.")
    double clearance,

    @Param(min = 1, max = 300, def = "25", help = "Free height above what things lie on.")
    double height) {
  /** What the room is called where an item says where it may go. */
  public static final String NAME = "between-rails";

  /** @throws BadDimension where stations do not go one way along the truck, or rails stand closer than the gaps */
  public RailsRoom {
    spacing = List.copyOf(spacing);
    if (spacing.size() == 1) {
      throw new BadDimension("spacing", "one station makes no space: its rear and its front end are needed",
          "Name at least two.");
    }
    boolean forward = spacing.size() > 1 && spacing.get(0).x() < spacing.get(spacing.size() - 1).x();
    for (int i = 0; i < spacing.size(); i++) {
      RailStation s = spacing.get(i);
      if (i > 0 && (forward ? s.x() < spacing.get(i - 1).x() : s.x() > spacing.get(i - 1).x())) {
        throw new BadDimension("spacing", "the stations go back and forth at x " + Micro.words(s.x()),
            "Sort them from the rear to the front.");
      }
      if (s.spacing() <= 2 * clearance) {
        throw new BadDimension("clearance", "gaps of " + Micro.words(clearance) + " on both sides leave nothing of the "
            + Micro.words(s.spacing()) + " between the rails at x " + Micro.words(s.x()), "Lower clearance.");
      }
    }
    if (spacing.size() > 1 && spacing.get(0).x() == spacing.get(spacing.size() - 1).x()) {
      throw new BadDimension("spacing", "all stations lie at x " + Micro.words(spacing.get(0).x()),
          "Give the x of the rear and of the front end.");
    }
  }

  /** The room, if stations are given. */
  public Optional<Room> room() {
    List<RailStation> stations = new ArrayList<>(spacing);
    if (stations.isEmpty()) {
      return Optional.empty();
    }
    if (stations.get(0).x() > stations.get(stations.size() - 1).x()) {
      Collections.reverse(stations);
    }
    List<Room.Section> sections = new ArrayList<>();
    for (int i = 1; i < stations.size(); i++) {
      RailStation rear = stations.get(i - 1);
      RailStation front = stations.get(i);
      if (rear.x() < front.x()) {
        double one = rear.spacing() / 2 - clearance;
        double other = front.spacing() / 2 - clearance;
        sections.add(new Room.Section(rear.x(), front.x(), -one, one, -other, other));
      }
    }
    return Optional.of(new Room(NAME, sections, height));
  }
}
