package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import outrigger.shapes.num.Grid;

/** Regions to JTS geometry and back, both in grid units, and the JTS operations used. */
final class Overlays {
  private static final PrecisionModel GRID = new PrecisionModel(1);
  static final GeometryFactory FACTORY = new GeometryFactory();

  private Overlays() {}

  static List<Region> union(List<List<Region>> parts) {
    List<Geometry> geometries = new ArrayList<>();
    for (List<Region> part : parts) {
      geometries.add(geometry(part));
    }
    return regions(UnaryUnionNG.union(geometries, FACTORY, GRID));
  }

  static List<Region> difference(List<Region> a, List<Region> b) {
    return regions(OverlayNG.overlay(geometry(a), geometry(b), OverlayNG.DIFFERENCE, GRID));
  }

  static List<Region> intersection(List<Region> a, List<Region> b) {
    return regions(OverlayNG.overlay(geometry(a), geometry(b), OverlayNG.INTERSECTION, GRID));
  }

  /** Grows or shrinks regions; an arc gets the given segments a quarter. */
  static List<Region> buffer(List<Region> regions, double distance, int segments) {
    return buffer(geometry(regions), distance, segments);
  }

  static List<Region> buffer(Geometry geometry, double distance, int segments) {
    BufferParameters how = new BufferParameters(segments);
    // Without this, hollows shallower than a hundredth of the distance are filled.
    how.setSimplifyFactor(0);
    return regions(PrecisionReducer.reducePrecision(BufferOp.bufferOp(geometry, distance, how), GRID));
  }

  /** Makes regions right again whose corners were moved to the grid anew. */
  static List<Region> snapped(List<Region> regions) {
    return regions(PrecisionReducer.reducePrecision(geometry(regions).buffer(0), GRID));
  }

  /** What is wrong with regions as an area, or an empty text. */
  static String fault(List<Region> regions) {
    TopologyValidationError error = new IsValidOp(geometry(regions)).getValidationError();
    if (error == null) {
      return "";
    }
    Coordinate at = error.getCoordinate();
    return error.getMessage().toLowerCase(Locale.ROOT) + " at "
        + Sizes.number(at.x * Grid.STEP) + ", "
        + Sizes.number(at.y * Grid.STEP) + " mm";
  }

  static Geometry geometry(List<Region> regions) {
    Polygon[] polygons = new Polygon[regions.size()];
    for (int i = 0; i < polygons.length; i++) {
      Region region = regions.get(i);
      polygons[i] = FACTORY.createPolygon(loop(region.shell()),
          region.holes().stream().map(Overlays::loop).toArray(LinearRing[]::new));
    }
    return polygons.length == 1 ? polygons[0] : FACTORY.createMultiPolygon(polygons);
  }

  private static LinearRing loop(Ring ring) {
    int n = ring.size();
    Coordinate[] points = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      points[i] = new Coordinate(ring.x(i % n), ring.y(i % n));
    }
    return FACTORY.createLinearRing(points);
  }

  /** Keeps the areas of a result; points and lines where operands merely touch are no part of a profile. */
  private static List<Region> regions(Geometry geometry) {
    List<Region> regions = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        add(polygon, regions);
      }
    }
    regions.sort(null);
    return List.copyOf(regions);
  }

  private static void add(Polygon polygon, List<Region> regions) {
    Ring shell = ring(polygon.getExteriorRing(), true);
    if (shell.size() == 0) {
      return;
    }
    List<Ring> holes = new ArrayList<>();
    for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
      Ring hole = ring(polygon.getInteriorRingN(h), false);
      if (hole.size() > 0) {
        holes.add(hole);
      }
    }
    regions.add(new Region(shell, holes));
  }

  private static Ring ring(LinearRing loop, boolean counterClockwise) {
    int n = loop.getNumPoints() - 1;
    int[] xy = new int[2 * n];
    for (int i = 0; i < n; i++) {
      xy[2 * i] = (int) Math.rint(loop.getCoordinateN(i).x);
      xy[2 * i + 1] = (int) Math.rint(loop.getCoordinateN(i).y);
    }
    return Ring.of(xy, counterClockwise);
  }
}
