package outrigger.generator.accessory.feature;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.BadDimension;
import outrigger.generator.accessory.Words;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * A screw hole that lies on its side in the build pose, with a pointed roof so that it prints without support.
 *
 * <p>The round hole is whole: the roof only adds room above it, so what passes the hole on the drawing passes the
 * hole in the part. A hexagon stands on a corner, and a countersink's 45 degrees need no roof.
 *
 * @param hole the hole as it would be along Z
 * @param overhang steepest overhang that prints without support, degrees from the vertical
 */
public record SidewaysHole(ScrewHole hole, double overhang) {
  /** Lean of a countersink's upper wall, and of the roof of a hexagon that stands on a corner, degrees. */
  private static final double CONE = 45;
  private static final double HEXAGON = 30;
  private static final double CLEAR_OF_ROUNDING = 4 * Grid.STEP;

  /**
   * Refuses what a roof cannot help.
   *
   * @throws BadDimension where the printer cannot do the lean that the recess has
   */
  public SidewaysHole {
    double lean = hole.seat() == HeadSeat.COUNTERSINK ? CONE : hole.fit() == Fit.NUT ? HEXAGON : 0;
    if (overhang < lean) {
      throw new BadDimension(lean == CONE ? "head-seat" : "fit", "the recess for " + hole.screw().name() + " lies on "
          + "its side and leans " + Words.number(lean) + " degrees, but this printer does "
          + Words.number(overhang) + " without support", "Choose another seat or fit.");
    }
  }

  /** Highest point of the hole above its axis, roof included, mm. */
  public double rise() {
    double bore = rise(hole.diameter());
    return Math.max(bore, isRoofed() ? rise(hole.mouth()) : hole.mouth() / 2);
  }

  /**
   * What to cut, along Y through the origin, Z up: its recess opens towards +Y.
   *
   * @param from y of the face the hole starts from
   * @param to y of the face with the recess
   * @param key the parameter that sets the thickness, for the refusal
   * @throws BadDimension where the part is too thin
   */
  public Solid cutter(double from, double to, String key) {
    List<Solid> parts = new ArrayList<>();
    parts.add(hole.cutter(from, to, key).turn(Axis.Z, 90).turn(Axis.X, -90));
    double step = to - hole.recess();
    boolean wide = !hole.isPlain() && hole.isWideThrough(to - from);
    parts.add(roof(wide ? hole.mouth() : hole.diameter(), from - ScrewHole.OVERSHOOT, to + ScrewHole.OVERSHOOT));
    if (isRoofed() && !wide) {
      parts.add(roof(hole.mouth(), step, to + ScrewHole.OVERSHOOT));
    }
    return Solid.union(parts);
  }

  /** Whether the recess at the mouth is a round one with an upright wall. */
  private boolean isRoofed() {
    return !hole.isPlain() && hole.seat() != HeadSeat.COUNTERSINK && hole.fit() != Fit.NUT;
  }

  private Solid roof(double diameter, double from, double to) {
    return Prism.of(roofProfile(diameter), -to, -from).turn(Axis.X, 90);
  }

  /** The roof seen along the hole, x across and y up: two slopes that touch the polygon round the hole. */
  private Profile roofProfile(double diameter) {
    double lean = StrictMath.toRadians(overhang);
    double cos = StrictMath.cos(lean);
    double sin = StrictMath.sin(lean);
    // The hole's corners are rounded outward: the slopes stand clear of them, or slivers of steeper sides would stay.
    double corner = cornerRadius(diameter) + CLEAR_OF_ROUNDING;
    // Past the point of touch by a side of the polygon, so that no side steeper than the slope is left over.
    double past = corner * StrictMath.tan(StrictMath.PI / Round.sides(diameter));
    double x = corner * cos + past * sin;
    double y = corner * sin - past * cos;
    return Profile.polygon(0, 0, x, y, 0, corner / sin, -x, y);
  }

  private double rise(double diameter) {
    return cornerRadius(diameter) / StrictMath.sin(StrictMath.toRadians(overhang));
  }

  private static double cornerRadius(double diameter) {
    return diameter / 2 / StrictMath.cos(StrictMath.PI / Round.sides(diameter));
  }
}
