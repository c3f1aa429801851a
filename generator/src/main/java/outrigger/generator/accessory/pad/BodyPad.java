package outrigger.generator.accessory.pad;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Bed;
import outrigger.generator.accessory.feature.Label;
import outrigger.generator.accessory.feature.LayerNote;
import outrigger.generator.accessory.feature.MagnetPocket;
import outrigger.generator.accessory.feature.PocketFit;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Piece;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.BadDimension;
import outrigger.presets.Shelf;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * The body's half of a mount: a plate glued under the body's floor whose pocket holds the facing magnet or steel.
 *
 * <p>It is built on its back, the face that is glued, so that pocket and marks lie on top. Ahead of the pocket stands the
 * pole that shows in it, behind it the label. On the truck it hangs face down, turned over about X.
 */
public final class BodyPad implements Accessory<BodyPadParams> {
  /** Room for a mark ahead of and behind the pocket, mm. */
  private static final double MARK_ROOM = 7;
  private static final double CORNER = 1.5;

  @Override
  public String kind() {
    return "body-pad";
  }

  @Override
  public String summary() {
    return "A plate glued under the body's floor that holds the magnet or steel disc a body mount pulls at.";
  }

  @Override
  public Class<BodyPadParams> parameters() {
    return BodyPadParams.class;
  }

  @Override
  public List<Part> build(BodyPadParams p, Shelf shelf) {
    MagnetPocket pocket = MagnetPocket.of(p.disc(), p.discs(), PocketFit.GLUE, p.leadIn(), p.printer())
        .withRecess(p.recess());
    require(p, pocket);
    Map<String, Double> heights = new LinkedHashMap<>(Map.of("pocket-floor", p.pad()));
    heights.put("total-height", height(p));
    return List.of(new Part("", solid(p, pocket), "On its back, the face that is glued to the body; pocket up.",
        notes(p, pocket), stated(p, pocket), heights, fixings(p)));
  }

  /** From the face that is glued to the rim, mm. */
  public static double height(BodyPadParams p) {
    return Math.rint(1e6 * (p.pad() + p.discs() * p.disc().thickness() + p.recess())) / 1e6;
  }

  /** The half of its bevel that is left below must still hold the disc. */
  private static void require(BodyPadParams p, MagnetPocket pocket) {
    double most = pocket.depth() / 2 - (pocket.bevelDepth() - p.leadIn());
    if (p.leadIn() > most + 1e-6) {
      throw new BadDimension("lead-in", "a lead-in of " + Words.mm(p.leadIn()) + " leaves too little of a pocket "
          + Words.mm(pocket.depth()) + " deep to hold the disc", most > 0 ? "Use " + Words.mm(Math.floor(most * 100) / 100)
          + " or less." : "Use a thicker disc or a deeper recess.");
    }
    if (p.wall() < p.printer().minimumWall() - 1e-6) {
      throw new BadDimension("wall", "a wall of " + Words.mm(p.wall()) + " is less than printer " + p.printer().name()
          + " makes soundly", "Use " + Words.mm(p.printer().minimumWall()) + " or more.");
    }
    Bed.require(p.printer(), length(p, pocket), width(p, pocket), height(p), "magnet");
  }

  private static double width(BodyPadParams p, MagnetPocket pocket) {
    return pocket.widest() + 2 * p.wall();
  }

  private static double length(BodyPadParams p, MagnetPocket pocket) {
    boolean isMarked = p.pole() != Pole.NONE || !p.label().isEmpty();
    return width(p, pocket) + (isMarked ? 2 * MARK_ROOM : 0);
  }

  private static Solid solid(BodyPadParams p, MagnetPocket pocket) {
    double top = height(p);
    List<Solid> cutters = new ArrayList<>(List.of(pocket.cutter(top)));
    mark(p, pocket, p.pole() == Pole.NONE ? "" : p.pole().name(), 1).ifPresent(cutters::add);
    mark(p, pocket, p.label(), -1).ifPresent(cutters::add);
    return Prism.of(Profile.roundedRectangle(length(p, pocket), width(p, pocket), CORNER), 0, top).cut(cutters);
  }

  /** A mark ahead of the pocket, or behind it. */
  private static Optional<Solid> mark(BodyPadParams p, MagnetPocket pocket, String text, int sign) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    double margin = p.printer().minimumWall();
    Label label = sign > 0 ? Label.fit(text, MARK_ROOM - margin, width(p, pocket) - 2 * margin, p.printer(), "pole")
        : Label.larger(text, MARK_ROOM - margin, width(p, pocket) - 2 * margin, p.printer());
    double middle = width(p, pocket) / 2 - p.wall() + MARK_ROOM / 2 + p.wall() / 2;
    return Optional.of(label.move(sign * middle, 0).engraveTop(height(p), Label.DEPTH));
  }

  private static List<String> notes(BodyPadParams p, MagnetPocket pocket) {
    List<String> notes = new ArrayList<>();
    notes.add("Glue its plain back under the body's floor" + (p.label().isEmpty() ? "" : ", pole mark forward")
        + ", with the pocket over the mount's.");
    if (p.facing() == Facing.MAGNET && p.pole() != Pole.NONE) {
      notes.add("The pole engraved is the one that shows in the pocket: " + p.pole()
          + ". The mount under it must bear the other letter; try the magnet on it before you glue.");
    }
    notes.add("Pocket for " + p.discs() + " x " + p.disc().name() + ": " + Words.mm(pocket.diameter()) + " wide ("
        + Words.mm(p.printer().holeAllowance()) + " hole allowance in it); the disc lies " + Words.mm(p.recess())
        + " below the rim.");
    notes.add("Over all, " + LayerNote.of(height(p), p.printer()).text());
    if (p.facing() == Facing.MAGNET) {
      notes.add("Loose magnets are dangerous: two that are swallowed are an emergency, they disturb pacemakers, pinch "
          + "and shatter; never heat them, and keep them from children.");
    }
    return notes;
  }

  private static Fixings fixings(BodyPadParams p) {
    Piece disc = p.facing() == Facing.MAGNET ? Articles.of(p.magnet()).times(p.stack())
        : new Piece(Piece.Kind.OTHER, "steel " + Words.number(p.steelWidth()) + " x " + Words.mm(p.steel()), 1);
    return new Fixings(List.of(), List.of(disc));
  }

  private static Map<String, Double> stated(BodyPadParams p, MagnetPocket pocket) {
    Map<String, Double> stated = new LinkedHashMap<>();
    stated.put("length", length(p, pocket));
    stated.put("width", width(p, pocket));
    stated.put("total-height", height(p));
    stated.put("pad", p.pad());
    stated.put("pocket-diameter", pocket.diameter());
    stated.put("rib-circle", pocket.grip());
    stated.put("pocket-depth", pocket.depth());
    stated.put("mouth-diameter", pocket.mouth());
    return stated;
  }
}
