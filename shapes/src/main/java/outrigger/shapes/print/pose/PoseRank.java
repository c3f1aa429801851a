package outrigger.shapes.print.pose;

import java.util.Comparator;

/**
 * Which pose is better: what fits before what does not, what stands before what falls, then what has enough contact, then
 * little support before much in steps of a doubling, then layers along the length, then the lower one.
 */
final class PoseRank {
  /** Degrees of tilt a pose bears before it is said to stand, own choice. */
  static final double LEAST_TILT = 1;
  /** Support below this share of the part's volume is none: own choice. */
  private static final double NEGLIGIBLE = 0.005;
  /** Heights are told apart by this, mm: own choice. */
  private static final double SAME_HEIGHT = 0.5;

  private PoseRank() {}

  /** Best first. */
  static Comparator<Pose> of(double volume, double leastContact) {
    return (a, b) -> {
      int order = Boolean.compare(b.fits(), a.fits());
      order = order != 0 ? order : Boolean.compare(b.stands(), a.stands());
      order = order != 0 ? order : Boolean.compare(a.contact() < leastContact, b.contact() < leastContact);
      order = order != 0 ? order : Integer.compare(step(a.support(), volume), step(b.support(), volume));
      order = order != 0 ? order : Boolean.compare(a.layersAcross(), b.layersAcross());
      return order != 0 ? order : Long.compare(Math.round(a.height() / SAME_HEIGHT), Math.round(b.height() / SAME_HEIGHT));
    };
  }

  private static int step(double support, double volume) {
    double ratio = support / (NEGLIGIBLE * volume);
    return ratio <= 1 ? 0 : 1 + Math.getExponent(ratio);
  }
}
