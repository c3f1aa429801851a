package outrigger.generator.fit;

import java.util.List;
import outrigger.generator.truck.Point;

/**
 * How a pull on the body is shared by its mounts: a stiff body on mounts that give alike, so that their shares lie in a
 * plane over their places and balance the pull and its moments (statics).
 */
final class Share {
  private static final double LINE = 1e-6;

  private final List<Site> sites;
  private final double midX;
  private final double midY;
  private final double xx;
  private final double yy;
  private final double xy;

  Share(List<Site> sites) {
    this.sites = sites;
    this.midX = sites.stream().mapToDouble(Site::x).average().orElse(0);
    this.midY = sites.stream().mapToDouble(Site::y).average().orElse(0);
    this.xx = sites.stream().mapToDouble(s -> (s.x() - midX) * (s.x() - midX)).sum();
    this.yy = sites.stream().mapToDouble(s -> (s.y() - midY) * (s.y() - midY)).sum();
    this.xy = sites.stream().mapToDouble(s -> (s.x() - midX) * (s.y() - midY)).sum();
  }

  /** Middle of the mounts, at a height. */
  Point middle(double z) {
    return new Point(midX, midY, z);
  }

  /** Whether the mounts stand in one line, or at one place, so that nothing keeps the body from tipping over it. */
  boolean isLine() {
    return xx * yy - xy * xy <= LINE * Math.max(1, xx * yy);
  }

  /**
   * Pull on one mount, of a pull and moments about the mounts' middle.
   *
   * @param pull upward, N
   * @param alongX moment of the pull over X, N mm: its force times its distance ahead of the middle
   * @param alongY the same over Y
   */
  double at(Site site, double pull, double alongX, double alongY) {
    double even = pull / sites.size();
    double dx = site.x() - midX;
    double dy = site.y() - midY;
    if (isLine()) {
      double along = xx >= yy ? (xx == 0 ? 0 : alongX / xx * dx) : alongY / yy * dy;
      return even + along;
    }
    double det = xx * yy - xy * xy;
    double slopeX = (alongX * yy - alongY * xy) / det;
    double slopeY = (alongY * xx - alongX * xy) / det;
    return even + slopeX * dx + slopeY * dy;
  }
}
