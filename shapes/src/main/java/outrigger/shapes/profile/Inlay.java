package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedPolygon;

/**
 * A polygon that lies within another, their outlines nowhere meeting, as layers of a round form do: what is left of the
 * outer one is put together from the outlines as they are.
 */
final class Inlay {
  private Inlay() {}

  /** Whether a shape is a polygon inside of another one and touches nothing of its outlines. */
  static boolean isIn(Geometry whole, Geometry part) {
    if (!(whole instanceof Polygon outer && part instanceof Polygon)) {
      return false;
    }
    Envelope around = whole.getEnvelopeInternal();
    Envelope box = part.getEnvelopeInternal();
    return around.getMinX() < box.getMinX() && around.getMinY() < box.getMinY() && around.getMaxX() > box.getMaxX()
        && around.getMaxY() > box.getMaxY() && new PreparedPolygon(outer).containsProperly(part);
  }

  /** What is left of the outer polygon: one part round the inner, and one in each of the inner one's holes. */
  static Geometry without(Polygon whole, Polygon part) {
    List<List<LinearRing>> holes = new ArrayList<>();
    for (int i = 0; i <= part.getNumInteriorRing(); i++) {
      holes.add(new ArrayList<>());
    }
    holes.get(0).add(part.getExteriorRing());
    for (int h = 0; h < whole.getNumInteriorRing(); h++) {
      holes.get(holeRound(whole.getInteriorRingN(h), part)).add(whole.getInteriorRingN(h));
    }
    Polygon[] left = new Polygon[holes.size()];
    for (int i = 0; i < left.length; i++) {
      left[i] = Overlays.FACTORY.createPolygon(i == 0 ? whole.getExteriorRing() : part.getInteriorRingN(i - 1),
          holes.get(i).toArray(LinearRing[]::new));
    }
    return left.length == 1 ? left[0] : Overlays.FACTORY.createMultiPolygon(left);
  }

  /** The hole of a polygon in which a ring lies, counted from 1, or 0 for one outside of it. */
  private static int holeRound(LinearRing ring, Polygon part) {
    for (int i = 0; i < part.getNumInteriorRing(); i++) {
      Coordinate[] hole = part.getInteriorRingN(i).getCoordinates();
      if (PointLocation.locateInRing(ring.getCoordinateN(0), hole) == Location.INTERIOR) {
        return i + 1;
      }
    }
    return 0;
  }
}
