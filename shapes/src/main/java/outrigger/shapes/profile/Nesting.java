package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds for each hole the smallest shell round it. */
final class Nesting {
  /** A shell with what is needed to ask whether a point lies in it. */
  private static final class Shell {
    private final LinearRing ring;
    private final double area;
    private final List<LinearRing> holes = new ArrayList<>();
    private IndexedPointInAreaLocator locator;

    private Shell(LinearRing ring) {
      this.ring = ring;
      area = Overlays.FACTORY.createPolygon(ring).getArea();
    }

    /** Whether it goes round a ring that does not cross it; the first corner off its own line decides. */
    private boolean holds(LinearRing hole) {
      if (locator == null) {
        locator = new IndexedPointInAreaLocator(ring);
      }
      for (Coordinate c : hole.getCoordinates()) {
        int where = locator.locate(c);
        if (where != Location.BOUNDARY) {
          return where == Location.INTERIOR;
        }
      }
      return true;
    }
  }

  private Nesting() {}

  /** The polygons of shells and holes. A hole in no shell, which rounding may leave of a sliver, is dropped. */
  static Geometry polygons(List<LinearRing> shells, List<LinearRing> holes) {
    List<Shell> all = shells.stream().map(Shell::new).toList();
    if (!holes.isEmpty()) {
      STRtree tree = new STRtree();
      all.forEach(shell -> tree.insert(shell.ring.getEnvelopeInternal(), shell));
      for (LinearRing hole : holes) {
        place(hole, tree);
      }
    }
    Polygon[] polygons = new Polygon[all.size()];
    Arrays.setAll(polygons, i -> Overlays.FACTORY.createPolygon(all.get(i).ring,
        all.get(i).holes.toArray(LinearRing[]::new)));
    return polygons.length == 1 ? polygons[0] : Overlays.FACTORY.createMultiPolygon(polygons);
  }

  @SuppressWarnings("unchecked")
  private static void place(LinearRing hole, STRtree tree) {
    List<Shell> near = new ArrayList<>((List<Shell>) tree.query(hole.getEnvelopeInternal()));
    near.sort(Comparator.comparingDouble(shell -> shell.area));
    for (Shell shell : near) {
      if (shell.ring.getEnvelopeInternal().covers(hole.getEnvelopeInternal()) && shell.holds(hole)) {
        shell.holes.add(hole);
        return;
      }
    }
  }
}
