package outrigger.shapes.solid;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Circles;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.profile.Sizes;

/**
 * A half section turned once round the Z axis.
 *
 * @param halfSection the section: its x is the radius (0 or more), its y becomes z
 * @param sides corners of each circle, a multiple of 4, at least {@link Circles#LEAST_SIDES}
 * @param circumscribed whether the flats (true, for cutters) or the corners (false) touch the true circle
 */
public record Revolution(Profile halfSection, int sides, boolean circumscribed) implements Solid {

  /**
   * Checks the section and the side count.
   *
   * @throws ShapeException if the section is empty or reaches across the axis, or the count is no multiple of 4
   */
  public Revolution {
    if (halfSection.isEmpty()) {
      throw new ShapeException("the half section of a revolution is empty", "Give it an area.");
    }
    if (halfSection.minX() < 0) {
      throw new ShapeException("the half section of a revolution reaches across the axis, to x = "
          + halfSection.minX() + " mm", "Keep all of it at x = 0 or more.");
    }
    checkSides(sides);
  }

  private static void checkSides(int sides) {
    if (sides < Circles.LEAST_SIDES || sides % 4 != 0) {
      throw new ShapeException("a revolution with " + sides + " sides; the count must be a multiple of 4, at least "
          + Circles.LEAST_SIDES, "Use a multiple of 4.");
    }
  }

  /** A post: as many sides as keep the largest circle within the chord error, corners on the true circles. */
  public static Revolution of(Profile halfSection) {
    return new Revolution(halfSection, Circles.inscribedSides(halfSection.maxX(), Profile.CHORD_ERROR), false);
  }

  /** A cutter: as many sides as keep the largest circle within the chord error, flats on the true circles. */
  public static Revolution cutter(Profile halfSection) {
    return new Revolution(halfSection, Circles.circumscribedSides(halfSection.maxX(), Profile.CHORD_ERROR), true);
  }

  /**
   * A cone or frustum as a post, its radii rounded to the grid as those of {@link Profile#post} are.
   *
   * @param bottomDiameter diameter at {@code bottom}, mm, 0 for a tip
   * @param topDiameter diameter at {@code top}, mm, 0 for a tip
   */
  public static Revolution cone(double bottomDiameter, double topDiameter, double bottom, double top) {
    return cone(bottomDiameter, topDiameter, bottom, top,
        Circles.inscribedSides(Math.max(bottomDiameter, topDiameter) / 2, Profile.CHORD_ERROR));
  }

  /** The same with as many sides as given. */
  public static Revolution cone(double bottomDiameter, double topDiameter, double bottom, double top, int sides) {
    return new Revolution(coneSection(bottomDiameter, topDiameter, bottom, top, false), sides, false);
  }

  /**
   * The same as a cutter, so that a cone of these sizes fits in; its radii are rounded as those of
   * {@link Profile#hole} are, so that it meets a hole of one of its diameters without a seam.
   */
  public static Revolution coneCutter(double bottomDiameter, double topDiameter, double bottom, double top) {
    return coneCutter(bottomDiameter, topDiameter, bottom, top,
        Circles.circumscribedSides(Math.max(bottomDiameter, topDiameter) / 2, Profile.CHORD_ERROR));
  }

  /** The same with as many sides as given: those of the hole it meets. */
  public static Revolution coneCutter(double bottomDiameter, double topDiameter, double bottom, double top,
      int sides) {
    return new Revolution(coneSection(bottomDiameter, topDiameter, bottom, top, true), sides, true);
  }

  /** A sphere about the origin, its corners on the true sphere. */
  public static Revolution sphere(double diameter) {
    return sphere(diameter, Circles.inscribedSides(diameter / 2, Profile.CHORD_ERROR));
  }

  /** A sphere with as many sides round the axis as given and half as many from pole to pole. */
  public static Revolution sphere(double diameter, int sides) {
    checkSides(sides);
    double r = diameter / 2;
    List<Double> xy = new ArrayList<>();
    int steps = sides / 2;
    for (int i = 0; i <= steps; i++) {
      double a = Math.PI * i / steps;
      boolean pole = i == 0 || i == steps;
      xy.add(pole ? 0 : r * StrictMath.sin(a));
      xy.add(i == 0 ? -r : i == steps ? r : -r * StrictMath.cos(a));
    }
    return new Revolution(Profile.polygon(xy.stream().mapToDouble(d -> d).toArray()), sides, false);
  }

  private static Profile coneSection(double bottomDiameter, double topDiameter, double bottom, double top,
      boolean hole) {
    double rb = radius("bottom diameter", bottomDiameter, hole);
    double rt = radius("top diameter", topDiameter, hole);
    if (Grid.fromMm(top) <= Grid.fromMm(bottom)) {
      throw new ShapeException("a cone from " + Sizes.mm(bottom) + " up to " + Sizes.mm(top) + " has no height",
          "Put its top above its bottom.");
    }
    if (rb == 0) {
      return Profile.polygon(0, bottom, rt, top, 0, top);
    }
    return rt == 0 ? Profile.polygon(0, bottom, rb, bottom, 0, top)
        : Profile.polygon(0, bottom, rb, bottom, rt, top, 0, top);
  }

  /** A radius on the grid, mm, 0 for a tip. */
  private static double radius(String name, double diameter, boolean hole) {
    if (diameter == 0) {
      return 0;
    }
    Sizes.positive(name, diameter);
    return Grid.toMm(hole ? Circles.holeRadius(diameter) : Circles.postRadius(diameter));
  }
}
