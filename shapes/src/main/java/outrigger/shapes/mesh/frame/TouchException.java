package outrigger.shapes.mesh.frame;

import java.util.function.UnaryOperator;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Place;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;

/** Parts have no more in common than a point or a line, and the result would touch itself there. */
public final class TouchException extends ShapeException {
  private final Place from;
  /** Where the line ends; null where it is not known to be one. */
  private final Place to;

  private TouchException(String where, Place from, Place to) {
    super("parts touch only " + where + ", which no print file can say",
        "Let them overlap by a tenth of a millimetre there, or move them apart.");
    this.from = from;
    this.to = to;
  }

  /** They touch somewhere near a place. */
  public static TouchException near(Place place) {
    return new TouchException("at a point or along a line here, near " + place.mm(), place, null);
  }

  /** They touch along a line. */
  public static TouchException along(Place from, Place to) {
    return new TouchException("along a line here, from " + from.mm() + " to " + to.mm(), from, to);
  }

  /** The same of parts that are placed elsewhere. */
  public TouchException placed(Placement p) {
    UnaryOperator<Place> placed = q -> {
      double x = Grid.toMm(q.x());
      double y = Grid.toMm(q.y());
      double z = Grid.toMm(q.z());
      return new Place(Grid.fromMm(p.x(x, y, z)), Grid.fromMm(p.y(x, y, z)), Grid.fromMm(p.z(x, y, z)));
    };
    return to == null ? near(placed.apply(from)) : along(placed.apply(from), placed.apply(to));
  }
}
