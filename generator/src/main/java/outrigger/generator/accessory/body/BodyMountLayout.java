package outrigger.generator.accessory.body;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.accessory.feature.Gusset;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.accessory.feature.Label;
import outrigger.generator.accessory.feature.MagnetPocket;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.accessory.feature.SidewaysHole;
import outrigger.presets.Printer;
import outrigger.presets.Rail;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;

/**
 * The sizes of a body mount once everything left to the program is worked out; mm.
 *
 * <p>Axes of the build pose: the web's face is y = 0 and the part lies at y from 0 up; Z is up as on the truck with the
 * flange's lower edge at 0; the post's middle is x = 0.
 *
 * @param p the parameters as given
 * @param pocket one magnet's pocket
 * @param hole one screw's hole
 * @param pushOut diameter of the push-out hole, the printer's allowance included
 * @param post thickness of the post along Y
 * @param magnetSpacing middle to middle of two pockets, 0 for one
 * @param flangeHeight height of the flange
 * @param screwX x of each screw
 * @param flangeFrom least x of the flange
 * @param flangeTo greatest x of the flange
 */
record BodyMountLayout(BodyMountParams p, MagnetPocket pocket, SidewaysHole hole, double pushOut, double post,
    double magnetSpacing, double flangeHeight, List<Double> screwX, double flangeFrom, double flangeTo) {
  /** Room round a head for its tolerance and for the tool, mm a side; common practice. */
  static final double HEAD_ROOM = 0.5;
  /** Middle of a screw to the edge of the plastic, in screw diameters; common practice. */
  static final double EDGE_DIAMETERS = 1.5;
  /** Play above and below a flange that goes in between a channel's flanges, mm a side; common practice. */
  static final double CHANNEL_PLAY = 0.2;
  /** Share of the magnet that a push-out pin takes, and the pins one can get, mm; common practice. */
  private static final double PUSH_SHARE = 0.4;
  private static final double PUSH_LEAST = 1;
  private static final double PUSH_MOST = 4;
  /** Sizes left to the program are rounded up to this, mm, so that they can be read off a rule. */
  private static final double STEP = 0.5;

  BodyMountLayout {
    screwX = List.copyOf(screwX);
  }

  /** Works the sizes out. */
  static BodyMountLayout of(BodyMountParams p, Shelf shelf) {
    Printer printer = p.printer();
    MagnetPocket pocket = MagnetPocket.of(p.magnet(), p.stack(), p.pocket(), p.leadIn(), printer);
    ScrewHole bore = ScrewHole.of(p.screw(), p.fit(), p.headSeat(), printer, shelf);
    SidewaysHole hole = new SidewaysHole(bore, printer.overhang());
    double post = p.postSize() > 0 ? p.postSize() : upToStep(leastPost(p, pocket));
    double spacing = p.magnets() == 1 ? 0
        : p.magnetSpacing() > 0 ? p.magnetSpacing() : upToStep(pocket.widest() + printer.minimumWall());
    List<Double> ahead = screwsAhead(p, bore, post + spacing);
    double edge = edge(p.screw(), bore);
    double front = (post + spacing) / 2;
    double rear = -front;
    for (double x : ahead) {
      rear = Math.min(rear, x - edge);
      front = Math.max(front, x + edge);
    }
    double more = p.flangeLength() > 0 ? (p.flangeLength() - (front - rear)) / 2 : 0;
    int hand = frontSign(p);
    double flangeHeight = p.flangeHeight() > 0 ? p.flangeHeight() : highestFlange(p);
    return new BodyMountLayout(p, pocket, hole, pushOut(p), post, spacing, flangeHeight,
        ahead.stream().map(x -> hand * x).toList(),
        hand > 0 ? rear - more : -(front + more), hand > 0 ? front + more : -(rear - more));
  }

  /** Room round a screw's axis that nothing else may enter, as a diameter: head, insert or nut with its wall. */
  static double seat(Screw screw, ScrewHole hole) {
    boolean headOnFlange = hole.seat() == HeadSeat.NONE && hole.fit().isClearance() && hole.fit() != Fit.NUT;
    return headOnFlange ? screw.headDiameter() + 2 * HEAD_ROOM : hole.landDiameter();
  }

  /** From a screw's middle to the nearest edge of the flange, at least. */
  static double edge(Screw screw, ScrewHole hole) {
    return Math.max(EDGE_DIAMETERS * screw.diameter(), hole.landDiameter() / 2);
  }

  /** Least thickness of the post round its pocket. */
  static double leastPost(BodyMountParams p, MagnetPocket pocket) {
    double wall = p.printer().minimumWall();
    double engraved = p.pole() != Pole.NONE || p.label() ? Label.DEPTH : 0;
    return Math.max(pocket.diameter() + 2 * (wall + engraved), pocket.mouth() + 2 * wall);
  }

  /** Highest flange that lies flat on the face of the web it is bolted to. */
  static double highestFlange(BodyMountParams p) {
    Rail rail = p.rail();
    return isInsideChannel(p) ? rail.height() - 2 * rail.web() - 2 * CHANNEL_PLAY : rail.height();
  }

  /** Whether the flange goes in between the flanges of a channel, which opens towards the truck's middle. */
  static boolean isInsideChannel(BodyMountParams p) {
    return p.mounting() == Mounting.INBOARD && p.rail().form().equals("channel");
  }

  /** Width of the post along X: its thickness, and the distance of two pockets. */
  double width() {
    return post + magnetSpacing;
  }

  /** Whether left and right are different parts. */
  boolean isHanded() {
    return Math.abs(flangeFrom + flangeTo) > 1e-9
        || screwX.stream().anyMatch(x -> screwX.stream().noneMatch(other -> Math.abs(x + other) < 1e-9));
  }

  /** y of the post's outer face. */
  double outerFace() {
    return p.reach() + post / 2;
  }

  /** z of the screws: the web's middle. */
  double screwZ() {
    return flangeHeight / 2;
  }

  /** z of the rails' top plane. */
  double railTop() {
    return screwZ() + p.rail().height() / 2;
  }

  /** z of the head's top face. */
  double top() {
    return railTop() + p.height();
  }

  /** What carries the post. */
  Gusset gusset() {
    return new Gusset(outerFace(), flangeHeight, p.gussetAngle());
  }

  /** x of each pocket. */
  List<Double> pocketX() {
    return p.magnets() == 1 ? List.of(0.0) : List.of(-magnetSpacing / 2, magnetSpacing / 2);
  }

  /** Distance from the post's middle to the nearest screw. */
  double nearestScrew() {
    return screwX.stream().mapToDouble(Math::abs).min().orElseThrow();
  }

  /** x of the screws with the front of the truck at +X, from the post outward. */
  private static List<Double> screwsAhead(BodyMountParams p, ScrewHole hole, double width) {
    double seat = seat(p.screw(), hole);
    double first = (p.screwSpacing() > 0 ? p.screwSpacing() : upToStep(width + seat)) / 2;
    double pitch = p.screwPitch() > 0 ? p.screwPitch() : upToStep(seat);
    int ahead = switch (p.postPlace()) {
      case MIDDLE -> p.screws() / 2;
      case FRONT -> 0;
      case REAR -> p.screws();
    };
    List<Double> x = new ArrayList<>();
    for (int i = 0; i < ahead; i++) {
      x.add(first + i * pitch);
    }
    for (int i = 0; i < p.screws() - ahead; i++) {
      x.add(-first - i * pitch);
    }
    return x;
  }

  /** +1 where the front of the truck is at +X, with the flange's web face looking towards -Y. */
  private static int frontSign(BodyMountParams p) {
    return (p.side() == Side.LEFT) == (p.mounting() == Mounting.OUTBOARD) ? 1 : -1;
  }

  private static double pushOut(BodyMountParams p) {
    double pin = p.pushOut() > 0 ? p.pushOut()
        : Math.max(PUSH_LEAST, Math.min(PUSH_MOST, PUSH_SHARE * p.magnet().diameter()));
    return pin + p.printer().holeAllowance();
  }

  private static double upToStep(double mm) {
    return Math.ceil(mm / STEP - 1e-9) * STEP;
  }
}
