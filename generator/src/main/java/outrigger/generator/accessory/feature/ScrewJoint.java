package outrigger.generator.accessory.feature;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Lengths;
import outrigger.generator.joint.Member;
import outrigger.generator.joint.Piece;
import outrigger.generator.joint.ScrewPlace;
import outrigger.generator.joint.ScrewThread;
import outrigger.presets.Nut;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;

/**
 * The joint that screws in a part's holes make with what the part lies against.
 *
 * <p>Where the hole lets the screw pass, the head lies on the part and a loose nut behind the others; where the hole
 * holds the thread, the head lies behind the others.
 *
 * @param name what it holds, such as {@code flange to rail}
 * @param hole one of the holes; its recess opens away from the others
 * @param plastic what the part is called among the things clamped, such as {@code flange}
 * @param thickness of the part at the hole, mm
 * @param others what else the screw goes through, from the part on
 */
public record ScrewJoint(String name, ScrewHole hole, String plastic, double thickness, List<Member> others) {
  public ScrewJoint {
    others = List.copyOf(others);
  }

  /**
   * The joint.
   *
   * @param contacts where each screw's axis leaves the part towards the others, pointing that way
   */
  public Joint at(List<ScrewPlace> contacts, Shelf shelf) {
    return hole.fit().isThrough() ? outward(contacts, shelf) : inward(contacts, shelf);
  }

  /** Head on the part, nut behind the others. */
  private Joint outward(List<ScrewPlace> contacts, Shelf shelf) {
    double under = underHead();
    List<Member> grip = new ArrayList<>();
    if (washer() > 0) {
      grip.add(Member.of("washer", washer()));
    }
    grip.add(Member.of(plastic, under - washer()));
    grip.addAll(others);
    Nut nut = shelf.items(Nut.class).stream().filter(n -> n.name().equals(screw().size())).findFirst().orElseThrow();
    List<Piece> extras = new ArrayList<>(hole.extras());
    extras.add(Articles.of(nut));
    ScrewThread thread = ScrewThread.nut(nut.height(), screw().diameter(), screw().pitch());
    return joint(grip, thread, extras, contacts.stream().map(contact -> contact.along(-under)).toList(), shelf);
  }

  /** Head behind the others, thread in the part. */
  private Joint inward(List<ScrewPlace> contacts, Shelf shelf) {
    List<Member> grip = new ArrayList<>(others);
    Collections.reverse(grip);
    double before = hole.fit() == Fit.PILOT ? 0 : beforeThread();
    if (before > 0) {
      grip.add(Member.of(plastic, before));
    }
    DoubleSummaryStatistics least = new DoubleSummaryStatistics();
    others.forEach(other -> least.accept(other.least()));
    double away = least.getSum();
    return joint(grip, thread(), hole.extras(),
        contacts.stream().map(contact -> contact.along(away).reversed()).toList(), shelf);
  }

  private Joint joint(List<Member> grip, ScrewThread thread, List<Piece> extras, List<ScrewPlace> places, Shelf shelf) {
    return new Joint(name, screw(), grip, thread, hole.head(), extras, places, "", Lengths.of(screw(), shelf));
  }

  private Screw screw() {
    return hole.screw();
  }

  /** Plastic and washer between the plane that the length is measured from and the others. */
  private double underHead() {
    return switch (hole.seat()) {
      case NONE, COUNTERSINK -> thickness;
      case COUNTERBORE, WASHER -> thickness - hole.recess() + washer();
    };
  }

  private double washer() {
    return hole.seat() == HeadSeat.WASHER ? hole.recess() - screw().headHeight() + hole.head().above() : 0;
  }

  /** Plastic before the nut or insert, which lies at the far face or on its pocket's floor. */
  private double beforeThread() {
    return Math.max(0, thickness - (hole.fit() == Fit.NUT ? hole.recess() : hole.thread()));
  }

  private ScrewThread thread() {
    double d = screw().diameter();
    return switch (hole.fit()) {
      case NUT -> ScrewThread.heldNut(hole.thread(), d, screw().pitch());
      case INSERT -> ScrewThread.insert(hole.thread(), d);
      default -> ScrewThread.plastic(thickness, d);
    };
  }
}
