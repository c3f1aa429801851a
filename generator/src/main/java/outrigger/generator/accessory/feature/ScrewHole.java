package outrigger.generator.accessory.feature;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Words;
import outrigger.generator.joint.Head;
import outrigger.generator.joint.Piece;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * A hole for one screw: plain, or widened at its mouth for the head, a brass insert or a nut. Diameters already hold
 * the printer's hole allowance; they are those of the model, mm.
 *
 * <p>An accessory that uses it names its parameters {@code screw}, {@code fit} and {@code head-seat}: refusals name
 * those keys.
 *
 * @param screw what goes through
 * @param fit what it does there
 * @param seat how its head lies; {@code NONE} unless the fit is a clearance fit without a nut
 * @param diameter of the bore, allowance included
 * @param mouth diameter of the recess at the mouth (across the corners for a nut), or of the bore where there is none
 * @param recess depth of the recess below the face, 0 where there is none
 * @param land depth of plain bore that must remain behind the recess to be worth keeping
 * @param thinnest part that can take this hole
 * @param wall least plastic round the mouth
 * @param head how the head lies once the part is printed; for a hole that holds the thread, where the head lies instead
 * @param thread length of the nut or insert it holds, 0 where it holds none
 * @param extras what goes with one screw in this hole: washer, nut or insert
 * @param why where the diameter comes from, one sentence without a full stop
 */
public record ScrewHole(Screw screw, Fit fit, HeadSeat seat, double diameter, double mouth, double recess, double land,
    double thinnest, double wall, Head head, double thread, List<Piece> extras, String why) {
  /** How far a cutter stands out of the faces it cuts, mm: any amount will do that leaves nothing thin behind. */
  public static final double OVERSHOOT = 1;

  public ScrewHole {
    extras = List.copyOf(extras);
  }

  /**
   * Works the hole out.
   *
   * @throws BadDimension where screw, fit and seat do not go together or the size is not in the fit's table
   */
  public static ScrewHole of(Screw screw, Fit fit, HeadSeat seat, Printer printer, Shelf shelf) {
    return new ScrewHoleRules(screw, printer, shelf).hole(fit, seat);
  }

  /** The bore seen along its axis, about the origin, for holes made in 2D. */
  public Profile profile() {
    return Profile.hole(diameter);
  }

  /** Diameter round the axis that must be solid plastic: the mouth and the least wall on both sides. */
  public double landDiameter() {
    return mouth + 2 * wall;
  }

  /**
   * What to cut, along Z about the origin, its recess open at the top face.
   *
   * @param bottom z of the part's lower face
   * @param top z of its upper face
   * @param key the parameter that sets the thickness, for the refusal
   * @throws BadDimension where the part is too thin
   */
  public Solid cutter(double bottom, double top, String key) {
    return cutter(bottom, top, 0, key);
  }

  /**
   * As {@link #cutter(double, double, String)}, with the rim at the bottom face broken.
   *
   * @param bevel leg of the 45 degree bevel at the bottom rim, mm, 0 for none
   */
  public Solid cutter(double bottom, double top, double bevel, String key) {
    requireThickness(top - bottom - bevel, key);
    return fit == Fit.NUT ? nutCutter(bottom, top, bevel) : turned(bottom, top, bevel);
  }

  /**
   * As {@link #cutter(double, double, String)}, its recess open at the bottom face.
   *
   * @throws BadDimension where the part is too thin
   */
  public Solid cutterFromBelow(double bottom, double top, String key) {
    return cutter(-top, -bottom, key).mirror(Axis.Z);
  }

  /** Whether the hole is the same all the way through, so that {@link #profile} says it all. */
  public boolean isPlain() {
    return recess == 0;
  }

  /**
   * Refuses a part too thin for the hole.
   *
   * @param key the parameter that sets the thickness
   */
  public void requireThickness(double thickness, String key) {
    if (thickness < thinnest - 1e-9) {
      throw new BadDimension(key, recessName() + (fit == Fit.INSERT ? "" : " " + Words.mm(recess) + " deep") + " for "
          + screw.name() + " needs a part "
          + Words.mm(thinnest) + " thick, but it is " + Words.mm(thickness),
          "Make the part thicker, or choose a smaller screw or another seat.");
    }
  }

  /** The dimensions it promises in a part of a thickness, by name, mm. */
  public Map<String, Double> stated(double thickness) {
    Map<String, Double> stated = new LinkedHashMap<>();
    if (isPlain() || isWideThrough(thickness)) {
      stated.put("hole-diameter", mouth);
      return stated;
    }
    String name = recessName().substring(recessName().indexOf(' ') + 1).replace(' ', '-');
    boolean nut = fit == Fit.NUT;
    stated.put("hole-diameter", diameter);
    stated.put(name + (nut ? "-across-flats" : "-diameter"), nut ? acrossFlats() : mouth);
    stated.put(name + "-depth", recess);
    return stated;
  }

  /** Whether so little would remain behind the recess that it is bored right through. */
  boolean isWideThrough(double thickness) {
    return thickness - recess < land - 1e-9;
  }

  private double acrossFlats() {
    return mouth * StrictMath.cos(StrictMath.PI / 6);
  }

  private String recessName() {
    return switch (fit) {
      case INSERT -> "an insert hole";
      case NUT -> "a nut pocket";
      default -> seat == HeadSeat.COUNTERSINK ? "a countersink" : "a counterbore";
    };
  }

  /** Bore and round recess as one turned shape, so that both have the same corners. */
  private Solid turned(double bottom, double top, double bevel) {
    double step = top - recess;
    double high = top + OVERSHOOT;
    if (isPlain() || isWideThrough(top - bottom - bevel)) {
      return turned(mouth, bottom, high, bevel);
    }
    double r = diameter / 2;
    double m = mouth / 2;
    double shoulder = seat == HeadSeat.COUNTERSINK ? top : step;
    return turned(mouth, bottom, bevel, r, r, step, m, shoulder, m, high, 0, high);
  }

  private Solid nutCutter(double bottom, double top, double bevel) {
    Solid bore = turned(diameter, bottom, top - recess / 2, bevel);
    return Solid.union(bore, Prism.of(Profile.hexagon(acrossFlats()), top - recess, top + OVERSHOOT));
  }

  /** A plain round cutter. */
  private static Solid turned(double width, double bottom, double high, double bevel) {
    if (bevel == 0) {
      return Prism.of(Profile.hole(width), bottom - OVERSHOOT, high);
    }
    return turned(width, bottom, bevel, width / 2, width / 2, high, 0, high);
  }

  /**
   * A turned cutter with a bevelled lower rim.
   *
   * @param widest diameter that sets the number of sides
   * @param r radius at the bottom face above the bevel
   * @param above the rest of the half section, r and z of each corner
   */
  private static Solid turned(double widest, double bottom, double bevel, double r, double... above) {
    double low = bottom - OVERSHOOT;
    double[] start = bevel == 0 ? new double[] {0, low, r, low}
        : new double[] {0, low, r + bevel, low, r + bevel, bottom, r, bottom + bevel};
    double[] all = Arrays.copyOf(start, start.length + above.length);
    System.arraycopy(above, 0, all, start.length, above.length);
    return new Revolution(Profile.polygon(all), Round.sides(widest), true);
  }
}
