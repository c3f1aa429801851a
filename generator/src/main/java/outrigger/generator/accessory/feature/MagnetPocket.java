package outrigger.generator.accessory.feature;

import java.util.ArrayList;
import java.util.List;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Printer;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * A round pocket for a stack of disc magnets, open upward; mm. Diameters are those of the model: the printer's hole
 * allowance is in them.
 *
 * <p>A glue pocket has upright crush ribs, bevelled at the top. A slip pocket has a lip all round whose underside
 * leans no further than the printer can do without support. Both widen towards the face by a 45 degree lead-in.
 *
 * @param magnet the disc
 * @param stack how many lie on each other
 * @param fit how they are held
 * @param diameter of the pocket's wall
 * @param grip diameter of the circle that the ribs or the lip leave free
 * @param depth from the face to the pocket's floor
 * @param recess from the face to the top of the upper magnet as it lies on the floor
 * @param mouth diameter at the face
 * @param leadIn leg of the bevel at the face
 * @param lean of the lip's underside, degrees from the vertical
 * @param layer thickness of the lip's land
 * @param bead width of a rib's crest
 */
public record MagnetPocket(DiscMagnet magnet, int stack, PocketFit fit, double diameter, double grip, double depth,
    double recess, double mouth, double leadIn, double lean, double layer, double bead) {
  /** Play over the diameter round a glued magnet, mm: glue needs 0.1 to 0.2; common practice. */
  static final double GLUE_PLAY = 0.2;
  /** Play over the diameter round a magnet that slips in, mm: 0.1 to 0.2; common practice. */
  static final double SLIP_PLAY = 0.15;
  /** How much smaller than the magnet the ribs' circle is, mm: as a press fit, with ribs that give; common practice. */
  static final double RIB_BITE = 0.1;
  /** How much smaller than the magnet the lip is, mm: twice the 0.1 that discs vary by; common practice. */
  static final double LIP_BITE = 0.2;
  /** How far a glued magnet lies below the face, mm: discs vary by 0.1 in thickness; common practice. */
  static final double BELOW_FACE = 0.2;
  /** Play between a magnet and the lip above it, mm: discs vary by 0.1 in thickness; common practice. */
  static final double BELOW_LIP = 0.1;
  /** Below this diameter three ribs do, mm; they need two beads each and gaps as wide. */
  private static final double SMALL = 5;
  /** How far a rib's foot stands in the wall, mm. */
  private static final double ROOT = 0.5;

  /** Works a pocket out for a printer. */
  public static MagnetPocket of(DiscMagnet magnet, int stack, PocketFit fit, double leadIn, Printer printer) {
    boolean glue = fit == PocketFit.GLUE;
    double allowance = printer.holeAllowance();
    double wall = magnet.diameter() + (glue ? GLUE_PLAY : SLIP_PLAY) + allowance;
    double grip = magnet.diameter() - (glue ? RIB_BITE : LIP_BITE) + allowance;
    double lip = (wall - grip) / 2 / StrictMath.tan(StrictMath.toRadians(printer.overhang())) + printer.layer();
    double recess = glue ? BELOW_FACE : BELOW_LIP + lip + leadIn;
    return new MagnetPocket(magnet, stack, fit, wall, grip, stack * magnet.thickness() + recess, recess,
        (glue ? wall : grip) + 2 * leadIn, leadIn, printer.overhang(), printer.layer(), printer.extrusionWidth());
  }

  /** The same with its magnets elsewhere below the face, as far as {@code recess}. */
  public MagnetPocket withRecess(double below) {
    return new MagnetPocket(magnet, stack, fit, diameter, grip, stack * magnet.thickness() + below, below, mouth, leadIn,
        lean, layer, bead);
  }

  /** Widest the pocket gets. */
  public double widest() {
    return Math.max(diameter, mouth);
  }

  /** Depth of the lead-in, for a glue pocket with the bevel of the ribs. */
  public double bevelDepth() {
    return fit == PocketFit.GLUE ? leadIn + step() : leadIn;
  }

  /** What to cut about the Z axis, from a face at {@code top} down. */
  public Solid cutter(double top) {
    return fit == PocketFit.GLUE ? glueCutter(top) : slipCutter(top);
  }

  /** How far ribs or lip stand out of the wall. */
  private double step() {
    return (diameter - grip) / 2;
  }

  private Solid glueCutter(double top) {
    double r = diameter / 2;
    double floor = top - depth;
    double bevel = top - leadIn;
    Solid plain = revolved(0, floor, r, floor, r, bevel, mouth / 2, top, mouth / 2, over(top), 0, over(top));
    // The bevel runs on down to the ribs' crests, so that a disc meets no square end.
    Solid guide = revolved(0, bevel - step(), grip / 2, bevel - step(), r, bevel, 0, bevel);
    return plain.cut(ribs(floor, bevel)).join(guide);
  }

  private Solid slipCutter(double top) {
    double r = diameter / 2;
    double g = grip / 2;
    double bevel = top - leadIn;
    double land = bevel - layer;
    double under = top - recess + BELOW_LIP;
    return revolved(0, top - depth, r, top - depth, r, under, g, land, g, bevel, mouth / 2, top, mouth / 2, over(top),
        0, over(top));
  }

  private List<Solid> ribs(double floor, double top) {
    int count = magnet.diameter() < SMALL ? 3 : 6;
    double near = grip / 2;
    double far = diameter / 2 + ROOT;
    double crest = bead / 2;
    double foot = crest + (far - near);
    Profile rib = Profile.polygon(near, -crest, far, -foot, far, foot, near, crest);
    List<Solid> ribs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ribs.add(Prism.of(rib.turn(90 + 360.0 * i / count), floor - ROOT, top));
    }
    return ribs;
  }

  private Solid revolved(double... section) {
    return new Revolution(Profile.polygon(section), Round.sides(widest()), true);
  }

  private static double over(double top) {
    return top + ScrewHole.OVERSHOOT;
  }
}
