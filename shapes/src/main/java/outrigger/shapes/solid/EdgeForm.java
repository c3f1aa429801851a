package outrigger.shapes.solid;

/** How the rim of a prism's end face is broken. */
public sealed interface EdgeForm {

  /** Sharp. */
  record Sharp() implements EdgeForm {}

  /** A 45 degree bevel with the given leg, mm. */
  record Chamfer(double leg) implements EdgeForm {}

  /** A rounded rim with the given radius, mm. */
  record Fillet(double radius) implements EdgeForm {}

  /** Leaves the rim sharp. */
  static EdgeForm sharp() {
    return new Sharp();
  }

  /** Bevels the rim at 45 degrees. */
  static EdgeForm chamfer(double leg) {
    return new Chamfer(leg);
  }

  /** Rounds the rim. */
  static EdgeForm fillet(double radius) {
    return new Fillet(radius);
  }
}
