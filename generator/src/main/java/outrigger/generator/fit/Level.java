package outrigger.generator.fit;

import java.util.List;
import java.util.Map;
import outrigger.generator.stack.Spread;

/**
 * How the body sits on its mounts: the plane that fits their errors best.
 *
 * @param lift how far it lies high in the middle of its mounts, mm
 * @param pitch degrees by which its nose is up
 * @param roll degrees by which its left side is up
 * @param pitchSpread how far pitch may be off, degrees
 * @param rollSpread how far roll may be off, degrees
 */
public record Level(double lift, double pitch, double roll, Spread pitchSpread, Spread rollSpread) {

  /**
   * The plane.
   *
   * @param heights of each site's station
   */
  static Level of(List<Site> sites, Map<Site, Height> heights) {
    Share plane = new Share(sites);
    double lift = 0;
    double slopeX = 0;
    double slopeY = 0;
    double[] worst = new double[2];
    double[] squares = new double[2];
    for (Site site : sites) {
      Height height = heights.get(site);
      double x = weight(plane, site, 1, 0);
      double y = weight(plane, site, 0, 1);
      lift += height.error() / sites.size();
      slopeX += x * height.error();
      slopeY += y * height.error();
      worst[0] += Math.abs(x) * height.spread().worst();
      worst[1] += Math.abs(y) * height.spread().worst();
      squares[0] += Math.pow(x * height.spread().rootSumSquare(), 2);
      squares[1] += Math.pow(y * height.spread().rootSumSquare(), 2);
    }
    return new Level(lift, degrees(slopeX), degrees(slopeY), new Spread(degrees(worst[0]), degrees(Math.sqrt(squares[0]))),
        new Spread(degrees(worst[1]), degrees(Math.sqrt(squares[1]))));
  }

  /** How much the plane's slope gains from a mount's error, 1/mm: the same weights that share a moment. */
  private static double weight(Share plane, Site site, double alongX, double alongY) {
    return plane.at(site, 0, alongX, alongY);
  }

  private static double degrees(double slope) {
    return StrictMath.toDegrees(StrictMath.atan(slope)) + 0.0;
  }

  /** Whether it sits level within a limit, spread left out. */
  public boolean isWithin(double degrees) {
    return Math.abs(pitch) <= degrees && Math.abs(roll) <= degrees;
  }
}
