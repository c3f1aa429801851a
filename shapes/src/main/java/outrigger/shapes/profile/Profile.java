package outrigger.shapes.profile;

import java.util.List;

/** Flat regions on the grid. Pending: the whole class; this sketch fixes the names. */
public final class Profile {
  private static RuntimeException pending() {
    return new UnsupportedOperationException("pending");
  }

  /** Largest distance between a true circle and its polygon, mm. */
  public static final double CHORD_ERROR = 0.01;

  /** A rectangle centred on the origin. */
  public static Profile rectangle(double width, double depth) {
    throw pending();
  }

  /** The same with rounded corners. */
  public static Profile roundedRectangle(double width, double depth, double radius) {
    throw pending();
  }

  /** The same with corners cut at 45 degrees. */
  public static Profile chamferedRectangle(double width, double depth, double leg) {
    throw pending();
  }

  /** A round hole about the origin: its flats touch the true circle, so a 3.4 hole passes 3.4. */
  public static Profile hole(double diameter) {
    throw pending();
  }

  /** A round post about the origin: its corners lie on the true circle. */
  public static Profile post(double diameter) {
    throw pending();
  }

  /** A slot hole about the origin, long side along X, ends circumscribed; length over all. */
  public static Profile slot(double length, double width) {
    throw pending();
  }

  /** A hexagon about the origin, two flats parallel to X. */
  public static Profile hexagon(double acrossFlats) {
    throw pending();
  }

  /** A polygon from x, y pairs, either turn; must not cross itself. */
  public static Profile polygon(double... xy) {
    throw pending();
  }

  /** Stroke text, baseline at y = 0, starting at x = 0; height of capitals and stroke width in mm. */
  public static Profile text(String text, double height, double stroke) {
    throw pending();
  }

  public Profile move(double x, double y) {
    throw pending();
  }

  public Profile turn(double degrees) {
    throw pending();
  }

  /** Mirrored in the Y axis: x becomes -x. */
  public Profile mirrorX() {
    throw pending();
  }

  /** Mirrored in the X axis: y becomes -y. */
  public Profile mirrorY() {
    throw pending();
  }

  /** Grown (positive) or shrunk (negative) by a distance; outer corners rounded within the chord error. */
  public Profile offset(double distance) {
    throw pending();
  }

  public Profile join(Profile... others) {
    throw pending();
  }

  public Profile cut(Profile... others) {
    throw pending();
  }

  public Profile common(Profile other) {
    throw pending();
  }

  public static Profile union(List<Profile> profiles) {
    throw pending();
  }

  public boolean isEmpty() {
    throw pending();
  }

  /** Area, mm^2. */
  public double area() {
    throw pending();
  }

  public double minX() {
    throw pending();
  }

  public double maxX() {
    throw pending();
  }

  public double minY() {
    throw pending();
  }

  public double maxY() {
    throw pending();
  }

  /** The regions, in a fixed order: shell counter-clockwise, holes clockwise. */
  public List<Region> regions() {
    throw pending();
  }
}
