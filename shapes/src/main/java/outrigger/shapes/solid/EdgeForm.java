package outrigger.shapes.solid;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/** How the rim of a prism's end face is broken. */
public sealed interface EdgeForm {

  /** How far it reaches from the end face along the prism, mm. */
  double height();

  /** Sharp. */
  record Sharp() implements EdgeForm {
    @Override
    public double height() {
      return 0;
    }
  }

  /** A 45 degree bevel with the given leg, mm, above 0. */
  record Chamfer(double leg) implements EdgeForm {
    public Chamfer {
      check("chamfer", leg);
    }

    @Override
    public double height() {
      return leg;
    }
  }

  /** A rounded rim with the given radius, mm, above 0. */
  record Fillet(double radius) implements EdgeForm {
    public Fillet {
      check("fillet", radius);
    }

    @Override
    public double height() {
      return radius;
    }
  }

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

  private static void check(String what, double size) {
    if (!(size >= Grid.STEP && size <= Grid.LIMIT_MM)) {
      throw new ShapeException("a " + what + " of " + size + " mm", "Use one above 0, or leave the rim sharp.");
    }
  }
}
