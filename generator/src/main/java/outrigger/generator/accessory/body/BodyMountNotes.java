package outrigger.generator.accessory.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.LayerNote;
import outrigger.generator.accessory.feature.MagnetPocket;
import outrigger.generator.accessory.feature.PocketFit;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.accessory.feature.ScrewJoint;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;
import outrigger.generator.joint.ScrewPlace;
import outrigger.presets.Shelf;
import outrigger.shapes.print.LayerHeight;

/** What goes with a body mount on paper: notes for the maker and the hardware. */
final class BodyMountNotes {
  private BodyMountNotes() {}

  static List<String> of(BodyMountLayout l) {
    List<String> notes = new ArrayList<>();
    notes.add(hand(l));
    notes.add(pocket(l));
    notes.add("Over all, " + LayerNote.of(l.top(), l.p().printer()).text());
    notes.add("Screw holes: " + l.hole().hole().why() + ", with a pointed roof above the round hole.");
    notes.add(foot(l));
    if (l.p().magnets() == 2 && l.p().pole() != Pole.NONE) {
      notes.add("Both magnets have the " + l.p().pole() + " pole up and push each other apart: fasten one before "
          + "you bring the other near.");
    }
    notes.add("Loose magnets are dangerous: two that are swallowed are an emergency, they disturb pacemakers, pinch "
        + "and shatter; never heat them, and keep them from children.");
    return notes;
  }

  /** The joint of flange and rail, and the magnets. */
  static Fixings fixings(BodyMountLayout l, Shelf shelf) {
    BodyMountParams p = l.p();
    boolean box = p.rail().form().equals("box");
    Member rail = Member.of(box ? "box rail" : "web", box ? p.rail().flange() : p.rail().web());
    List<ScrewPlace> contacts = l.screwX().stream().map(x -> new ScrewPlace(x, 0, l.screwZ(), 0, -1, 0)).toList();
    Joint joint = new ScrewJoint("flange to rail", l.hole().hole(), "flange", p.flangeThickness(), List.of(rail))
        .at(contacts, shelf);
    return new Fixings(List.of(joint), List.of(Articles.of(p.magnet()).times(p.magnets() * p.stack())));
  }

  private static String hand(BodyMountLayout l) {
    String where = word(l.p().side()) + " rail, " + word(l.p().mounting());
    return l.isHanded() ? "For the " + where + "; the other hand is another part."
        : "For the " + where + "; left and right are the same part.";
  }

  private static String pocket(BodyMountLayout l) {
    MagnetPocket pocket = l.pocket();
    String drawn = "Pocket for " + l.p().stack() + " x " + l.p().magnet().name() + ": " + Words.mm(pocket.diameter())
        + " wide (" + Words.mm(l.p().printer().holeAllowance()) + " hole allowance in it), ";
    String held = pocket.fit() == PocketFit.GLUE
        ? "ribs on a circle of " + Words.mm(pocket.grip()) + " hold the magnet while the glue sets"
        : "a lip of " + Words.mm(pocket.grip()) + " keeps the magnet in once it is pressed past";
    double depth = LayerHeight.between(l.top() - pocket.depth(), l.top(), l.p().printer().firstLayer(),
        l.p().printer().layer());
    String layers = Words.mm(depth).equals(Words.mm(pocket.depth())) ? "" : "; layers make the pocket "
        + Words.number(depth) + " instead of " + Words.mm(pocket.depth()) + " deep";
    return drawn + held + "; its face lies " + Words.mm(pocket.recess()) + " below the head" + layers + ".";
  }

  private static String foot(BodyMountLayout l) {
    Balance balance = Balance.of(l);
    String foot = "It stands on a foot " + Words.mm(balance.foot()) + " deep";
    return balance.stands() ? foot + " with its weight over it."
        : foot + ", but its weight lies " + Words.mm(balance.weight() - balance.foot())
            + " outside it: print it with a brim, or use a smaller gusset-angle.";
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
