package outrigger.generator.accessory.body;

import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.accessory.feature.Gusset;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.accessory.feature.PocketFit;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Printer;
import outrigger.presets.Screw;

/** Refuses sizes of a body mount that cannot work together, in the order one would notice them at the bench. */
final class BodyMountChecks {
  /** Least ring of floor under the magnet round the push-out hole, mm; common practice. */
  private static final double LEDGE = 0.5;
  /** Least floor under a magnet that is pushed in and out, mm; common practice. */
  private static final double FLOOR = 1.2;
  /** Most of a glue pocket's depth that the bevels may take from the ribs; common practice. */
  private static final double BEVEL_SHARE = 0.5;
  /** Play between the post and the edge of a channel's flange, mm; common practice. */
  private static final double RAIL_PLAY = 0.3;
  /** Thread a screw needs in plastic that it cuts itself, in diameters; common practice. */
  private static final double ENGAGEMENT_DIAMETERS = 2;
  /** Below this, lengths are equal, mm: sums of decimals differ in the last binary digits. */
  private static final double EQUAL = 1e-6;

  /** Limits in advice are worded in hundredths of a millimetre. */
  private static final double ROUNDED = 100;

  private final BodyMountLayout l;
  private final BodyMountParams p;
  private final Printer printer;

  private BodyMountChecks(BodyMountLayout layout) {
    this.l = layout;
    this.p = layout.p();
    this.printer = layout.p().printer();
  }

  /**
   * Checks a layout.
   *
   * @throws BadDimension naming the parameter to look at first
   */
  static void require(BodyMountLayout layout) {
    BodyMountChecks checks = new BodyMountChecks(layout);
    checks.requirePocket();
    checks.requirePushOut();
    checks.requirePost();
    checks.requireMagnetSpacing();
    checks.requireReach();
    checks.requireFlangeHeight();
    checks.requireGusset();
    checks.requireFloor();
    checks.requireSeat();
    checks.requireScrewEdges();
    checks.requireScrewsClear();
    checks.requireFlangeLength();
    checks.requireBed();
  }

  private void requirePocket() {
    double most = BEVEL_SHARE * l.pocket().depth() - (l.pocket().bevelDepth() - p.leadIn());
    if (p.pocket() == PocketFit.GLUE && p.leadIn() > most + EQUAL) {
      refuse("lead-in", "a lead-in of " + mm(p.leadIn()) + " leaves too little of a pocket "
          + mm(l.pocket().depth()) + " deep to hold the magnet", "Use " + under(most) + " or less.");
    }
  }

  private void requirePushOut() {
    double most = p.magnet().diameter() - 2 * LEDGE;
    if (l.pushOut() > most + EQUAL) {
      refuse("push-out", "a push-out hole of " + mm(l.pushOut()) + " (" + mm(printer.holeAllowance())
          + " hole allowance in it) leaves a " + mm(p.magnet().diameter()) + " magnet less than " + mm(LEDGE)
          + " of floor to lie on", "Use " + under(most - printer.holeAllowance()) + " or less.");
    }
  }

  private void requirePost() {
    double least = BodyMountLayout.leastPost(p, l.pocket());
    if (l.post() < least - EQUAL) {
      refuse("post-size", "a pocket " + mm(l.pocket().diameter()) + " wide (" + mm(l.pocket().mouth())
          + " at its mouth) with walls needs a post of " + mm(least) + ", but post-size is " + mm(l.post()),
          "Use " + over(least) + " or more, 0 to have it worked out, or a smaller magnet.");
    }
  }

  private void requireMagnetSpacing() {
    double least = l.pocket().widest() + printer.minimumWall();
    if (p.magnets() == 2 && l.magnetSpacing() < least - EQUAL) {
      refuse("magnet-spacing", "two pockets " + mm(l.pocket().widest()) + " wide need " + mm(least)
          + " from middle to middle to keep a wall of " + mm(printer.minimumWall()) + ", but magnet-spacing is "
          + mm(l.magnetSpacing()), "Use " + over(least) + " or more, or 0 to have it worked out.");
    }
    if (p.magnets() == 1 && p.magnetSpacing() > 0) {
      refuse("magnet-spacing", "there is one magnet, so magnet-spacing " + mm(p.magnetSpacing()) + " has no meaning",
          "Use magnets 2, or leave magnet-spacing at 0.");
    }
  }

  private void requireReach() {
    boolean inside = BodyMountLayout.isInsideChannel(p);
    double nearest = inside ? p.rail().flange() - p.rail().web() + RAIL_PLAY : 0;
    double least = nearest + l.post() / 2;
    if (p.reach() < least - EQUAL) {
      refuse("reach", "at a reach of " + mm(p.reach()) + " a post of " + mm(l.post()) + " meets the rail"
          + (inside ? "'s flange, which stands " + mm(p.rail().flange() - p.rail().web()) + " out from the web"
          : ""), "Use a reach of " + over(least) + " or more, or a slimmer post.");
    }
    if (p.mounting() == Mounting.INBOARD && l.outerFace() > p.rail().spacing() - nearest - RAIL_PLAY + EQUAL) {
      refuse("reach", "at a reach of " + mm(p.reach()) + " a post of " + mm(l.post())
          + " meets the other rail, " + mm(p.rail().spacing()) + " away", "Use a reach of "
          + under(p.rail().spacing() - nearest - RAIL_PLAY - l.post() / 2) + " or less, or mount it outboard.");
    }
  }

  private void requireFlangeHeight() {
    double most = BodyMountLayout.highestFlange(p);
    if (l.flangeHeight() > most + EQUAL) {
      refuse("flange-height", "a flange " + mm(l.flangeHeight()) + " high does not lie flat on rail " + p.rail().name()
          + ", whose web leaves " + mm(most), "Use " + under(most) + " or less, or 0 to have it worked out.");
    }
  }

  private void requireGusset() {
    if (p.gussetAngle() > printer.overhang() + EQUAL) {
      refuse("gusset-angle", "a gusset that leans " + Words.number(p.gussetAngle())
          + " degrees from the vertical is more than printer " + printer.name() + " does without support, "
          + Words.number(printer.overhang()), "Use " + Words.number(printer.overhang()) + " or less.");
    }
  }

  private void requireFloor() {
    double lowest = lowestFloor();
    double missing = lowest - (l.top() - l.pocket().depth());
    if (missing > EQUAL) {
      String key = p.stack() > 1 && missing <= (p.stack() - 1) * p.magnet().thickness() ? "stack" : "height";
      refuse(key, "at a height of " + mm(p.height()) + " a pocket " + mm(l.pocket().depth()) + " deep for "
          + p.stack() + " x " + p.magnet().name() + " leaves no sound floor above the gusset",
          "Use a height of " + over(p.height() + missing) + " or more, fewer or thinner magnets, or a smaller "
              + "gusset-angle.");
    }
  }

  /** Lowest a pocket's floor may lie so that a wall remains between it and the gusset's underside. */
  private double lowestFloor() {
    Gusset gusset = l.gusset();
    double wall = printer.minimumWall() / StrictMath.cos(StrictMath.toRadians(p.gussetAngle()));
    double clear = gusset.underside(p.reach() + l.pocket().diameter() / 2 + wall);
    return Math.max(FLOOR, Math.min(l.flangeHeight(), clear));
  }

  private void requireSeat() {
    Screw screw = p.screw();
    if (screw.isCountersunk() && l.hole().hole().fit().isClearance() && p.fit() != Fit.NUT
        && p.headSeat() == HeadSeat.NONE) {
      refuse("head-seat", "the conical head of " + screw.name() + " cannot sit on a flat flange",
          "Use head-seat countersink, or a screw with a flat seat.");
    }
    double thread = ENGAGEMENT_DIAMETERS * screw.diameter();
    if (p.fit() == Fit.PILOT && p.flangeThickness() < thread - EQUAL) {
      refuse("flange-thickness", "a flange " + mm(p.flangeThickness()) + " thick gives " + screw.name()
          + " too little thread, " + mm(thread) + " is the least", "Use " + over(thread) + " or more, or fit insert.");
    }
  }

  private void requireScrewEdges() {
    double half = l.flangeHeight() / 2;
    double edge = BodyMountLayout.edge(p.screw(), l.hole().hole());
    double roof = l.hole().rise() + printer.minimumWall();
    double head = p.fit() == Fit.FINE || p.fit() == Fit.MEDIUM || p.fit() == Fit.COARSE
        ? p.screw().headDiameter() / 2 : 0;
    double least = Math.max(edge, Math.max(roof, head));
    if (half < least - EQUAL) {
      refuse(p.flangeHeight() > 0 ? "flange-height" : "screw", "screws in the middle of a flange "
          + mm(l.flangeHeight()) + " high are closer to its edges than " + mm(least) + ", which "
          + p.screw().name() + " needs", p.flangeHeight() > 0
          ? "Use a flange-height of " + over(2 * least) + " or more, or a smaller screw."
          : "Use a smaller screw, or a rail with a higher web.");
    }
  }

  private void requireScrewsClear() {
    double seat = BodyMountLayout.seat(p.screw(), l.hole().hole());
    double least = (l.width() + seat) / 2;
    String what = p.fit() == Fit.INSERT ? "the insert of " : p.fit() == Fit.NUT ? "the nut of "
        : p.fit() == Fit.PILOT ? "the thread of " : "the head of ";
    if (l.nearestScrew() < least - EQUAL) {
      refuse("screw-spacing", what + p.screw().name() + " (" + mm(seat) + " with room round it) meets the gusset, "
          + mm(l.width()) + " wide, at a screw-spacing of " + mm(2 * l.nearestScrew()), "Use "
          + over(2 * least) + " or more, or 0 to have it worked out.");
    }
    if (p.screwPitch() > 0 && p.screwPitch() < seat - EQUAL) {
      refuse("screw-pitch", "screws " + mm(p.screwPitch()) + " apart meet each other: " + p.screw().name() + " takes "
          + mm(seat) + " with room round it", "Use " + over(seat) + " or more, or 0 to have it worked out.");
    }
  }

  private void requireFlangeLength() {
    double edge = BodyMountLayout.edge(p.screw(), l.hole().hole());
    double first = l.screwX().stream().mapToDouble(x -> x - edge).min().orElseThrow();
    double last = l.screwX().stream().mapToDouble(x -> x + edge).max().orElseThrow();
    double least = Math.max(last, l.width() / 2) - Math.min(first, -l.width() / 2);
    double length = l.flangeTo() - l.flangeFrom();
    if (length < least - EQUAL) {
      refuse("flange-length", "a flange " + mm(length) + " long leaves less than " + mm(edge)
          + " from its outermost screws to its ends, or none of it under the post", "Use " + over(least)
          + " or more, 0 to have it worked out, or bring the screws closer.");
    }
  }

  private void requireBed() {
    double length = l.flangeTo() - l.flangeFrom();
    if (l.outerFace() > printer.bedY()) {
      refuse("reach", "the part is " + mm(l.outerFace()) + " deep, but the bed of printer " + printer.name() + " is "
          + mm(printer.bedY()), "Lower reach by " + mm(l.outerFace() - printer.bedY()) + ".");
    }
    if (l.top() > printer.bedZ()) {
      refuse("height", "the part stands " + mm(l.top()) + " high, but printer " + printer.name() + " prints "
          + mm(printer.bedZ()), "Lower height by " + mm(l.top() - printer.bedZ()) + ".");
    }
    if (length > printer.bedX()) {
      refuse("flange-length", "the part is " + mm(length) + " long, but the bed of printer " + printer.name() + " is "
          + mm(printer.bedX()), "Use fewer screws or bring them closer.");
    }
  }

  private static void refuse(String parameter, String what, String advice) {
    throw new BadDimension(parameter, what, advice);
  }

  /** A limit to stay above, rounded to the safe side. */
  private static String over(double least) {
    return mm(Math.ceil(least * ROUNDED - EQUAL) / ROUNDED);
  }

  /** A limit to stay below, rounded to the safe side. */
  private static String under(double most) {
    return mm(Math.max(0, Math.floor(most * ROUNDED + EQUAL) / ROUNDED));
  }

  private static String mm(double value) {
    return Words.mm(value);
  }
}
