package outrigger.generator.accessory.spacer;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.accessory.feature.Label;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.param.BadDimension;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * The shape of a spacer, whatever its thickness. It is described lying flat about its middle, from z = 0 up.
 *
 * @param hole what is cut for each screw
 * @param pattern where the holes lie
 */
record SpacerShape(SpacerParams params, ScrewHole hole, HolePattern pattern) {
  /** Layers that stay under an engraving, so that it does not show through; common practice. */
  private static final int LAYERS_UNDER_LABEL = 2;

  /** Checks everything that does not depend on the thickness. */
  static SpacerShape of(SpacerParams p, ScrewHole hole) {
    requireRadius(p);
    requireSlot(p);
    SpacerShape shape = new SpacerShape(p, hole, HolePattern.of(p, hole));
    shape.requireBevelFits();
    return shape;
  }

  private static void requireRadius(SpacerParams p) {
    double most = Math.min(p.length(), p.width()) / 2;
    if (p.cornerRadius() > most) {
      throw new BadDimension("corner-radius", "a corner radius of " + Words.mm(p.cornerRadius())
          + " is more than half the shorter side, " + Words.mm(most), "Lower corner-radius to " + Words.mm(most)
          + " or less.");
    }
  }

  private static void requireSlot(SpacerParams p) {
    if (p.slot() > 0 && (p.fit() == Fit.PILOT || p.fit() == Fit.INSERT || p.fit() == Fit.NUT)) {
      throw new BadDimension("slot", "a screw cannot be shifted in a hole that holds it: slot is "
          + Words.mm(p.slot()), "Set slot to 0, or fit to fine, medium or coarse.");
    }
    if (p.slot() > 0 && p.headSeat() == HeadSeat.COUNTERSINK) {
      throw new BadDimension("slot", "a countersink centres its screw, so a slot of " + Words.mm(p.slot())
          + " would not let it shift", "Set slot to 0, or head-seat to none or counterbore.");
    }
  }

  private void requireBevelFits() {
    double leg = params.bedChamfer();
    if (leg > 0 && params.pose() == SpacerPose.ON_EDGE) {
      throw new BadDimension("bed-chamfer", "on its edge the spacer lies on no rim that a bevel of " + Words.mm(leg)
          + " would break", "Set bed-chamfer to 0, or pose to flat.");
    }
    double bead = params.printer().extrusionWidth();
    double left = narrowest() - 2 * leg;
    if (leg > 0 && left < bead - 1e-9) {
      throw new BadDimension("bed-chamfer", "a bevel of " + Words.mm(leg) + " on both sides leaves "
          + Words.mm(Math.max(0, left)) + " of the narrowest wall on the bed, less than one bead of " + Words.mm(bead),
          "Lower bed-chamfer to " + Words.mm(Math.max(0, (narrowest() - bead) / 2)) + " or less.");
    }
  }

  private double narrowest() {
    if (pattern.count() == 0) {
      return Math.min(params.length(), params.width());
    }
    double ends = params.length() / 2 - (params.holes() - 1) / 2.0 * params.pitch() - pattern.halfX();
    double sides = params.width() / 2 - (params.rows() - 1) / 2.0 * params.rowPitch() - pattern.halfY();
    double columns = params.holes() > 1 ? params.pitch() - 2 * pattern.halfX() : ends;
    double rows = params.rows() > 1 ? params.rowPitch() - 2 * pattern.halfY() : sides;
    return Math.min(Math.min(ends, sides), Math.min(columns, rows));
  }

  /**
   * The spacer in its pose on the bed.
   *
   * @param marked whether the thickness is engraved
   * @param key the parameter that set the thickness
   */
  Solid solid(double thickness, boolean marked, String key) {
    requireThickEnough(thickness, key);
    Solid body = body(thickness, key);
    if (marked) {
      body = body.cut(label(thickness).engraveTop(thickness, params.engraveDepth()));
    }
    return params.pose() == SpacerPose.FLAT ? body
        : body.turn(Axis.X, 90).move(0, 0, -outline().minY());
  }

  private void requireThickEnough(double thickness, String key) {
    if (2 * params.bedChamfer() > thickness) {
      throw new BadDimension("bed-chamfer", "a bevel of " + Words.mm(params.bedChamfer())
          + " is more than half the thickness of " + Words.mm(thickness), "Lower bed-chamfer or raise " + key + ".");
    }
  }

  private Profile outline() {
    return params.cornerRadius() == 0 ? Profile.rectangle(params.length(), params.width())
        : Profile.roundedRectangle(params.length(), params.width(), params.cornerRadius());
  }

  /** Plain holes belong to the outline; only a recess needs cutting in 3D. */
  private Solid body(double thickness, String key) {
    if (pattern.count() > 0 && !hole.isPlain()) {
      hole.requireThickness(thickness - params.bedChamfer(), key);
    }
    boolean planar = hole.isPlain() || params.slot() > 0;
    Profile base = planar ? outline().cut(places(bore()).toArray(Profile[]::new)) : outline();
    Prism prism = Prism.of(base, 0, thickness);
    Solid body = params.bedChamfer() == 0 ? prism : prism.withBottomEdge(EdgeForm.chamfer(params.bedChamfer()));
    if (hole.isPlain()) {
      return body;
    }
    return body.cut(params.slot() > 0 ? slotRecesses(thickness) : recesses(thickness, key));
  }

  private Profile bore() {
    return params.slot() == 0 ? hole.profile()
        : Profile.slot(hole.diameter() + params.slot(), hole.diameter());
  }

  private List<Profile> places(Profile one) {
    List<Profile> all = new ArrayList<>();
    for (double y : pattern.lines()) {
      for (double x : pattern.columns()) {
        all.add(one.move(x, y));
      }
    }
    return all;
  }

  private List<Solid> slotRecesses(double thickness) {
    Profile mouth = Profile.slot(hole.mouth() + params.slot(), hole.mouth());
    List<Solid> cutters = new ArrayList<>();
    for (Profile place : places(mouth)) {
      cutters.add(Prism.of(place, thickness - hole.recess(), thickness + ScrewHole.OVERSHOOT));
    }
    return cutters;
  }

  private List<Solid> recesses(double thickness, String key) {
    List<Solid> cutters = new ArrayList<>();
    for (double y : pattern.lines()) {
      for (double x : pattern.columns()) {
        cutters.add(hole.cutter(0, thickness, params.bedChamfer(), key).move(x, y, 0));
      }
    }
    return cutters;
  }

  /** Where each screw's axis leaves the lower face, in the build pose. */
  List<ScrewPlace> contacts() {
    boolean flat = params.pose() == SpacerPose.FLAT;
    List<ScrewPlace> contacts = new ArrayList<>();
    for (double y : pattern.lines()) {
      for (double x : pattern.columns()) {
        contacts.add(flat ? new ScrewPlace(x, y, 0, 0, 0, -1)
            : new ScrewPlace(x, 0, y + params.width() / 2, 0, 1, 0));
      }
    }
    return contacts;
  }

  private Label label(double thickness) {
    double least = params.engraveDepth() + LAYERS_UNDER_LABEL * params.printer().layer();
    if (thickness < least - 1e-9) {
      throw new BadDimension("engrave-depth", "an engraving " + Words.mm(params.engraveDepth())
          + " deep does not fit a spacer " + Words.mm(thickness) + " thick: it takes " + Words.mm(least),
          "Lower engrave-depth, or set engrave to never.");
    }
    return LabelPlace.find(Words.number(thickness), params, pattern, params.printer().minimumWall());
  }
}
