package outrigger.generator.joint;

import java.util.List;
import outrigger.presets.Screw;

/**
 * Screws of one sort through the same things into the same thread; mm.
 *
 * <p>A screw's length is measured as its standard does: under the head, for a countersunk head over all. The grip is
 * what lies between that plane and the beginning of the thread.
 *
 * @param name what it holds, such as {@code flange to rail}
 * @param screw size and head
 * @param grip what the screws pass through, in order from the head
 * @param thread what they end in
 * @param head how their heads lie
 * @param extras what goes with one screw: nut, washer, insert
 * @param places where each screw lies, at least one
 * @param oneOf where joints of a set of parts are used one at a time, a name they share; else empty
 * @param stock lengths one can buy, rising
 */
public record Joint(String name, Screw screw, List<Member> grip, ScrewThread thread, Head head, List<Piece> extras,
    List<ScrewPlace> places, String oneOf, Lengths stock) {
  public Joint {
    grip = List.copyOf(grip);
    extras = List.copyOf(extras);
    places = List.copyOf(places);
    if (places.isEmpty()) {
      throw new IllegalArgumentException(name + " has no screws");
    }
  }

  /** The same joint as one of a set that is used one at a time. */
  public Joint oneOf(String set) {
    return new Joint(name, screw, grip, thread, head, extras, places, set, stock);
  }

  /** The same with the screws' ends kept out of what lies ahead of them; a head that lies there is not looked at. */
  public Joint clearOf(List<Block> blocks) {
    double room = places.stream().map(place -> place.along(leastGrip() + thread.length()))
        .flatMap(end -> blocks.stream().map(block -> block.ahead(end, screw.diameter() / 2)))
        .min(Double::compare).orElse(Double.POSITIVE_INFINITY);
    return room >= thread.room() ? this
        : new Joint(name, screw, grip, thread.withRoom(room), head, extras, places, oneOf, stock);
  }

  /** Shortest length one can buy that will do; where no table lists the screw, the shortest that would. */
  public double shortestSold() {
    return stock.usual().stream().filter(length -> length >= shortest() - Lengths.EQUAL).findFirst().orElse(shortest());
  }

  /** Number of screws. */
  public int count() {
    return places.size();
  }

  /** The grip with every member at its thinnest. */
  public double leastGrip() {
    return grip.stream().mapToDouble(Member::least).sum();
  }

  /** The grip with every member at its thickest. */
  public double mostGrip() {
    return grip.stream().mapToDouble(Member::most).sum();
  }

  /** Shortest screw that still has the thread it needs in the thickest grip. */
  public double shortest() {
    return mostGrip() + thread.needed();
  }

  /** Longest screw whose end still keeps within the room behind the thread in the thinnest grip. */
  public double longest() {
    return leastGrip() + thread.length() + thread.room();
  }

  /** Whether a length will do; sums of decimals are off by less than the last figure shown. */
  public boolean takes(double length) {
    return length >= shortest() - Lengths.EQUAL && length <= longest() + Lengths.EQUAL;
  }

  /** Lengths one can buy that will do, first choice of the standard only. */
  public List<Double> usual() {
    return stock.usual().stream().filter(this::takes).toList();
  }

  /** How much of the thread a screw of a length is in, in the thickest grip. */
  public double engagement(double length) {
    return Math.max(0, Math.min(thread.length(), length - mostGrip()));
  }

  /** How far the end of a screw of a length stands out behind the thread, in the thinnest grip. */
  public double protrusion(double length) {
    return Math.max(0, length - leastGrip() - thread.length());
  }

  /** What goes with its screws. */
  public List<Piece> pieces() {
    return extras.stream().map(piece -> piece.times(count())).toList();
  }

  /** Screw and lengths that will do, such as {@code M3-socket x 10 or 12}. */
  String screwWords() {
    List<Double> usual = usual();
    return usual.isEmpty()
        ? screw.name() + ", " + Lengths.words(shortest()) + " to " + Lengths.words(longest()) + " mm long"
        : screw.name() + " x " + String.join(" or ", usual.stream().map(Lengths::words).toList());
  }
}
