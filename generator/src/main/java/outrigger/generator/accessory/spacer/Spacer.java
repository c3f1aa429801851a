package outrigger.generator.accessory.spacer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Bed;
import outrigger.generator.accessory.feature.LayerNote;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.accessory.feature.ScrewJoint;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Shelf;

/** A block or plate of exact thickness with screw holes, alone or as a marked set. */
public final class Spacer implements Accessory<SpacerParams> {
  @Override
  public String kind() {
    return "bumper-spacer";
  }

  @Override
  public String summary() {
    return "A plate of exact thickness with screw holes that moves a bumper away from its mount, alone or as a set "
        + "with the thicknesses engraved.";
  }

  @Override
  public Class<SpacerParams> parameters() {
    return SpacerParams.class;
  }

  @Override
  public List<Part> build(SpacerParams p, Shelf shelf) {
    ScrewHole hole = ScrewHole.of(p.screw(), p.fit(), p.headSeat(), p.printer(), shelf);
    SpacerShape shape = SpacerShape.of(p, hole);
    if (p.set().isEmpty()) {
      return List.of(part(shape, "", p.thickness(), "thickness", shelf));
    }
    requireDifferent(p.set());
    List<Part> parts = new ArrayList<>();
    for (double thickness : p.set()) {
      parts.add(part(shape, Words.number(thickness), thickness, "set", shelf));
    }
    return parts;
  }

  private static void requireDifferent(List<Double> set) {
    Set<String> seen = new HashSet<>();
    for (double thickness : set) {
      if (!seen.add(Words.number(thickness))) {
        throw new BadDimension("set", "the thickness " + Words.mm(thickness) + " stands twice in the set",
            "Name every thickness once; for more of one, print it again.");
      }
    }
  }

  private static Part part(SpacerShape shape, String suffix, double thickness, String key, Shelf shelf) {
    SpacerParams p = shape.params();
    boolean flat = p.pose() == SpacerPose.FLAT;
    Bed.require(p.printer(), p.length(), flat ? p.width() : thickness, flat ? thickness : p.width(), "length");
    boolean marked = p.engrave() == Engrave.ALWAYS || p.engrave() == Engrave.SETS && key.equals("set");
    return new Part(suffix, shape.solid(thickness, marked, key), pose(p), notes(shape, thickness),
        stated(shape, thickness), flat ? Map.of("thickness", thickness) : Map.of("width", p.width()),
        shape.pattern().count() == 0 ? Fixings.NONE
            : new Fixings(List.of(joint(shape, thickness, key, shelf)), List.of()));
  }

  /** Of a set only one spacer is used at a time. */
  private static Joint joint(SpacerShape shape, double thickness, String key, Shelf shelf) {
    SpacerParams p = shape.params();
    Joint joint = new ScrewJoint("spacer to bumper and mount", shape.hole(), "spacer", thickness,
        List.of(Member.of("bumper and mount", p.clamped()))).at(shape.contacts(), shelf);
    return key.equals("set") ? joint.oneOf("set") : joint;
  }

  private static String pose(SpacerParams p) {
    return p.pose() == SpacerPose.FLAT ? "Flat, its upper face up."
        : "On its long edge, so that its thickness lies in the plane of the bed.";
  }

  private static List<String> notes(SpacerShape shape, double thickness) {
    SpacerParams p = shape.params();
    List<String> notes = new ArrayList<>();
    if (p.pose() == SpacerPose.FLAT) {
      notes.add("Thickness " + LayerNote.of(thickness, p.printer()).text("print on edge"));
    } else {
      notes.add("Thickness " + Words.mm(thickness) + " does not depend on layers: it is as exact as the printer's "
          + "outlines.");
      if (p.cornerRadius() > 0) {
        notes.add("Its rounded corners start as overhangs on the bed; set corner-radius to 0 should they sag.");
      }
    }
    if (shape.pattern().count() > 0) {
      notes.add("Holes: " + shape.hole().why() + ".");
    }
    return notes;
  }

  private static Map<String, Double> stated(SpacerShape shape, double thickness) {
    SpacerParams p = shape.params();
    Map<String, Double> stated = new LinkedHashMap<>();
    stated.put("length", p.length());
    stated.put("width", p.width());
    stated.put("thickness", thickness);
    if (shape.pattern().count() > 0) {
      stated.putAll(shape.hole().stated(thickness - p.bedChamfer()));
    }
    if (p.holes() > 1) {
      stated.put("pitch", p.pitch());
    }
    if (p.rows() > 1 && p.holes() > 0) {
      stated.put("row-pitch", p.rowPitch());
    }
    return stated;
  }
}
