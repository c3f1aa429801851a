package outrigger.generator.accessory.feature;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * A screw hole that lies on its side in the build pose, with a pointed roof so that it prints without support.
 *
 * <p>The round hole is whole: the roof only adds room above it, so what passes the hole on the drawing passes the
 * hole in the part. A hexagon stands on a corner and gets the roof above its upright flats; a countersink's 45
 * degrees need none.
 *
 * @param hole the hole as it would be along Z
 * @param overhang steepest overhang that prints without support, degrees from the vertical
 */
public record SidewaysHole(ScrewHole hole, double overhang) {
  /** Lean of a countersink's upper wall, degrees from the vertical. */
  private static final double CONE = 45;
  /** How far a roof stands clear of corners rounded to the grid, mm. */
  private static final double CLEAR_OF_ROUNDING = 4 * Grid.STEP;

  /**
   * Refuses what a roof cannot help.
   *
   * @throws BadDimension where the printer cannot do the lean that the recess has
   */
  public SidewaysHole {
    if (hole.seat() == HeadSeat.COUNTERSINK && overhang < CONE) {
      throw new BadDimension("head-seat", "the countersink for " + hole.screw().name() + " lies on its side and leans "
          + Words.number(CONE) + " degrees, but this printer does " + Words.number(overhang) + " without support",
          "Choose another head-seat.");
    }
  }

  /** Highest point of the hole above its axis, roof included, mm. */
  public double rise() {
    double bore = rise(hole.diameter());
    double mouth = hole.fit() == Fit.NUT ? hexagonRise() : isRoofed() ? rise(hole.mouth()) : hole.mouth() / 2;
    return Math.max(bore, mouth);
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
    double end = to + ScrewHole.OVERSHOOT;
    parts.add(roof(roundRoof(wide ? hole.mouth() : hole.diameter()), from - ScrewHole.OVERSHOOT, end));
    if (isRoofed() && !wide) {
      parts.add(roof(roundRoof(hole.mouth()), step, end));
    }
    if (hole.fit() == Fit.NUT) {
      parts.add(roof(hexagonRoof(), step, end));
    }
    return Solid.union(parts);
  }

  /** Whether the recess at the mouth is a round one with an upright wall. */
  private boolean isRoofed() {
    return !hole.isPlain() && hole.seat() != HeadSeat.COUNTERSINK && hole.fit() != Fit.NUT;
  }

  private static Solid roof(Profile profile, double from, double to) {
    return Prism.of(profile, -to, -from).turn(Axis.X, 90);
  }

  /** The roof seen along the hole, x across and y up: two slopes that touch the polygon round the hole. */
  private Profile roundRoof(double diameter) {
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

  /** The roof above a hexagon's upright flats. */
  private Profile hexagonRoof() {
    double x = hexagonHalf();
    return Profile.polygon(0, 0, x, hole.mouth() / 4, 0, hexagonRise(), -x, hole.mouth() / 4);
  }

  private double hexagonRise() {
    return hole.mouth() / 4 + hexagonHalf() / StrictMath.tan(StrictMath.toRadians(overhang));
  }

  /** Half the width across the flats, clear of the rounding of the hexagon's corners. */
  private double hexagonHalf() {
    return hole.mouth() / 2 * StrictMath.cos(StrictMath.PI / 6) + CLEAR_OF_ROUNDING;
  }

  private double rise(double diameter) {
    return cornerRadius(diameter) / StrictMath.sin(StrictMath.toRadians(overhang));
  }

  private static double cornerRadius(double diameter) {
    return diameter / 2 / StrictMath.cos(StrictMath.PI / Round.sides(diameter));
  }
}
