package outrigger.shapes.check;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;

/**
 * Shows that nothing meets in a surface that is a plate: all corners in two planes across an axis, one flat cap in each, and
 * upright walls between them.
 *
 * <p>Each cap is simple by its rim ({@link Outline}). Each wall facet has a level edge, which must be a rim edge of a cap,
 * and its third corner must be opposite one end of it. So it stands over that rim edge and no other place. Its neighbour
 * over the slanting edge stands over the same one, with its level edge in the other cap's rim: had it that edge in the same
 * rim, the rim would run there twice. So both rims run over the same edges, with two facets over each, which meet in
 * their common edge; and facets over different edges meet over a common corner of these at most, in an upright edge or a
 * corner that both have, for a rim passes a corner once.
 */
final class Plate {
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final Surface surface;
  private final HalfEdges edges;
  private final int axis;
  private final int top;

  private Plate(Surface surface, HalfEdges edges, int axis, int top) {
    this.surface = surface;
    this.edges = edges;
    this.axis = axis;
    this.top = top;
  }

  /**
   * The caps and the connected walls of a plate, in which no facets meet.
   *
   * @return empty where it is not shown to be one, which says nothing
   */
  static Optional<Regions> regions(Surface surface, HalfEdges edges) {
    for (int axis = 0; axis < 3; axis++) {
      int one = surface.xyz()[axis];
      int other = one;
      boolean two = true;
      for (int i = axis; i < surface.xyz().length && two; i += 3) {
        int x = surface.xyz()[i];
        other = other == one ? x : other;
        two = x == one || x == other;
      }
      if (two) {
        return new Plate(surface, edges, axis, Math.max(one, other)).regions();
      }
    }
    return Optional.empty();
  }

  private Optional<Regions> regions() {
    AtomicBoolean stands = new AtomicBoolean(true);
    surface.workers().split(surface.facets(), AT_ONCE, (from, to) -> {
      for (int f = from; f < to && stands.get(); f++) {
        if (!(isCap(f) ? looksOut(f) : standsOnCap(f))) {
          stands.set(false);
        }
      }
    });
    return stands.get() ? cappedRegions() : Optional.empty();
  }

  private Optional<Regions> cappedRegions() {
    Regions regions = Regions.flood(edges, surface.facets(), h -> isCap(h / 3) == isCap(edges.across(h)));
    int[] caps = IntStream.range(0, regions.count()).filter(r -> isCap(regions.facet(regions.start(r)))).limit(3).toArray();
    return caps.length == 2 && !surface.workers().each(2, i -> new Outline(surface, edges).isSimple(regions, caps[i]))
        .contains(false) ? Optional.of(regions) : Optional.empty();
  }

  private boolean isTop(int vertex) {
    return surface.xyz()[3 * vertex + axis] == top;
  }

  private boolean isCap(int facet) {
    boolean first = isTop(surface.corner(facet, 0));
    return first == isTop(surface.corner(facet, 1)) && first == isTop(surface.corner(facet, 2));
  }

  private boolean looksOut(int cap) {
    return surface.normal(cap, axis) > 0 == isTop(surface.corner(cap, 0));
  }

  /** Whether a facet that is no cap stands over a rim edge, its third corner opposite one end of it. */
  private boolean standsOnCap(int wall) {
    int h = 3 * wall;
    while (isTop(edges.from(h)) != isTop(edges.to(h))) {
      h++;
    }
    int third = edges.from(HalfEdges.before(h));
    return isCap(edges.across(h)) && (isOpposite(third, edges.from(h)) || isOpposite(third, edges.to(h)));
  }

  private boolean isOpposite(int v, int w) {
    int u = (axis + 1) % 3;
    int t = (axis + 2) % 3;
    return surface.xyz()[3 * v + u] == surface.xyz()[3 * w + u] && surface.xyz()[3 * v + t] == surface.xyz()[3 * w + t];
  }
}
