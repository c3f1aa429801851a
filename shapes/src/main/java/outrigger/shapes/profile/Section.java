package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * A flat area off the grid: what a plane cuts out of a mesh. Lengths mm, coordinates doubles.
 *
 * <p>Unlike a {@link Profile} it is made for measuring, not for building: nothing of it enters a mesh. Corners where
 * outlines cross are rounded to double precision.
 */
public final class Section {
  private static final Section EMPTY = new Section(Overlays.FACTORY.createPolygon());

  private final Geometry geometry;
  private PointOnGeometryLocator locator;
  private IndexedFacetDistance outline;

  private Section(Geometry geometry) {
    this.geometry = geometry;
  }

  /** No area at all. */
  public static Section empty() {
    return EMPTY;
  }

  /**
   * The area within closed loops that neither cross nor touch by more than rounding.
   *
   * @param loops x, y of each loop's corners, the first not repeated; area on the left of each
   */
  public static Section of(List<double[]> loops) {
    List<LinearRing> shells = new ArrayList<>();
    List<LinearRing> holes = new ArrayList<>();
    for (double[] loop : loops) {
      if (loop.length >= 6) {
        LinearRing ring = ring(loop);
        (Orientation.isCCW(ring.getCoordinateSequence()) ? shells : holes).add(ring);
      }
    }
    return shells.isEmpty() ? EMPTY : new Section(Nesting.polygons(shells, holes));
  }

  private static LinearRing ring(double[] loop) {
    int n = loop.length / 2;
    Coordinate[] points = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      points[i] = new Coordinate(loop[2 * (i % n)], loop[2 * (i % n) + 1]);
    }
    return Overlays.FACTORY.createLinearRing(points);
  }

  /** Whether there is no area. */
  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  /** Area, mm^2. */
  public double area() {
    return geometry.getArea();
  }

  /** Width of a strip of the same area and outline, mm; of an area that is not empty. */
  public double meanWidth() {
    return 2 * geometry.getArea() / geometry.getLength();
  }

  /**
   * Radius of the largest circle within, mm; of an area that is not empty.
   *
   * @param within how near to it, mm, above 0
   */
  public double inscribedRadius(double within) {
    return MaximumInscribedCircle.getRadiusLine(geometry, within).getLength();
  }

  /** This area without another. */
  public Section minus(Section other) {
    if (other.isEmpty() || isEmpty()) {
      return this;
    }
    Set<LinearRing> common = commonHoles(other);
    Geometry whole = filled(common).geometry;
    Geometry part = other.filled(common).geometry;
    return Inlay.isIn(whole, part) ? new Section(Inlay.without((Polygon) whole, (Polygon) part))
        : new Section(OverlayNGRobust.overlay(whole, part, OverlayNG.DIFFERENCE));
  }

  /** Holes that this area and another have alike, each in one piece: nothing of either lies in them, nor of the difference. */
  private Set<LinearRing> commonHoles(Section other) {
    Map<Coordinate, LinearRing> holes = new HashMap<>();
    Set<LinearRing> common = Collections.newSetFromMap(new IdentityHashMap<>());
    if (geometry instanceof Polygon mine && other.geometry instanceof Polygon theirs) {
      for (int i = 0; i < theirs.getNumInteriorRing(); i++) {
        holes.put(theirs.getInteriorRingN(i).getCoordinateN(0), theirs.getInteriorRingN(i));
      }
      for (int i = 0; i < mine.getNumInteriorRing(); i++) {
        LinearRing hole = mine.getInteriorRingN(i);
        LinearRing same = holes.get(hole.getCoordinateN(0));
        if (same != null && same.equalsExact(hole)) {
          common.add(hole);
          common.add(same);
        }
      }
    }
    return common;
  }

  /** The same with some holes filled. */
  private Section filled(Set<LinearRing> holes) {
    if (holes.isEmpty()) {
      return this;
    }
    Polygon polygon = (Polygon) geometry;
    List<LinearRing> left = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      if (!holes.contains(polygon.getInteriorRingN(i))) {
        left.add(polygon.getInteriorRingN(i));
      }
    }
    return new Section(Overlays.FACTORY.createPolygon(polygon.getExteriorRing(), left.toArray(LinearRing[]::new)));
  }

  /**
   * The same, outlines nearer to each other than a distance taken as one, so that no slivers are left between them.
   *
   * @param within the distance, mm, above 0
   */
  public Section minus(Section other, double within) {
    if (other.isEmpty() || isEmpty()) {
      return this;
    }
    Set<LinearRing> common = commonHoles(other);
    try {
      return new Section(OverlayNG.overlay(filled(common).geometry, other.filled(common).geometry, OverlayNG.DIFFERENCE,
          null, new SnappingNoder(within)));
    } catch (TopologyException e) {
      // Where snapping would fold an outline over, slivers are the lesser evil.
      return minus(other);
    }
  }

  /** The connected areas of at least a size, mm^2, each a section, by least x and then y of their bounds. */
  public List<Section> pieces(double leastArea) {
    List<Section> pieces = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Geometry part = geometry.getGeometryN(i);
      if (part instanceof Polygon && part.getArea() >= leastArea) {
        pieces.add(new Section(part));
      }
    }
    pieces.sort(Comparator.comparingDouble(Section::minX).thenComparingDouble(Section::minY)
        .thenComparingDouble(Section::maxX).thenComparingDouble(Section::maxY).thenComparingDouble(Section::area));
    return pieces;
  }

  /** All outlines, x, y of each corner, the first not repeated; area on the left of each. */
  public List<double[]> loops() {
    List<double[]> loops = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        loops.add(loop(polygon.getExteriorRing(), true));
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
          loops.add(loop(polygon.getInteriorRingN(h), false));
        }
      }
    }
    return loops;
  }

  private static double[] loop(LinearRing ring, boolean counterClockwise) {
    int n = ring.getNumPoints() - 1;
    boolean turn = Orientation.isCCW(ring.getCoordinateSequence()) != counterClockwise;
    double[] xy = new double[2 * n];
    for (int i = 0; i < n; i++) {
      Coordinate c = ring.getCoordinateN(turn ? n - 1 - i : i);
      xy[2 * i] = c.x;
      xy[2 * i + 1] = c.y;
    }
    return xy;
  }

  /** Least x; 0 if empty. */
  public double minX() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMinX();
  }

  /** Least y; 0 if empty. */
  public double minY() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMinY();
  }

  /** Greatest x; 0 if empty. */
  public double maxX() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMaxX();
  }

  /** Greatest y; 0 if empty. */
  public double maxY() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMaxY();
  }

  /** Whether a point lies inside or on the outline. */
  public synchronized boolean holds(double x, double y) {
    if (locator == null) {
      locator = new IndexedPointInAreaLocator(geometry);
    }
    return !isEmpty() && locator.locate(new Coordinate(x, y)) != Location.EXTERIOR;
  }

  /** Distance of a point from the nearest outline; infinite if empty. */
  public synchronized double fromOutline(double x, double y) {
    if (isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    if (outline == null) {
      outline = new IndexedFacetDistance(geometry);
    }
    return outline.distance(Overlays.FACTORY.createPoint(new Coordinate(x, y)));
  }

  /** Whether the two areas come as near as a distance, mm. */
  public boolean isWithin(double distance, Section other) {
    return geometry.getEnvelopeInternal().distance(other.geometry.getEnvelopeInternal()) <= distance
        && IndexedFacetDistance.isWithinDistance(geometry, other.geometry, distance);
  }
}
