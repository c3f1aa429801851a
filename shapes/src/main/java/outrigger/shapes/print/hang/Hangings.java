package outrigger.shapes.print.hang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import outrigger.shapes.num.DisjointSets;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.layer.Rim;
import outrigger.shapes.print.layer.Undersides;

/** Joins pieces of different layers that hang together, and adds up how far they stand out. */
final class Hangings {
  /** Pieces so many layers apart may still be one slope made of steps. */
  private static final int LOOK_BACK = 5;
  /** Pieces nearer than this touch, mm. */
  private static final double TOUCH = 0.01;

  /** What goes through fewer layers does not wind round anything. */
  private static final int STEPS = 3;

  private final List<Hang> hangs;
  private final double layer;
  private final double tangent;
  private final double ledge;
  private final DisjointSets together;
  private final double[] depth;
  private final double widest;

  private Hangings(List<Hang> hangs, Specimen specimen) {
    this.hangs = hangs;
    layer = specimen.limit(Limit.LAYER);
    tangent = Undersides.tangent(specimen.limit(Limit.OVERHANG));
    ledge = specimen.limit(Limit.LEDGE);
    depth = new double[hangs.size()];
    double most = 0;
    for (Hang hang : hangs) {
      most = Math.max(most, hang.piece().maxX() - hang.piece().minX());
    }
    widest = most;
    together = new DisjointSets(hangs.size());
  }

  /**
   * What hangs together, in order of the lowest pieces.
   *
   * @param hangs from the bed up
   */
  static List<Hanging> of(List<Hang> hangs, Specimen specimen) {
    Hangings all = new Hangings(hangs, specimen);
    all.join();
    Map<Integer, List<Integer>> sets = new TreeMap<>();
    for (int i = 0; i < hangs.size(); i++) {
      sets.computeIfAbsent(all.together.find(i), first -> new ArrayList<>()).add(i);
    }
    return sets.values().stream().map(set -> Hanging.of(set.stream().map(hangs::get).toList(), all.depth(set, specimen)))
        .toList();
  }

  /** How far pieces that hang together stand out: over layers no farther than from ground that is solid all the way up. */
  private double depth(List<Integer> set, Specimen specimen) {
    double all = set.stream().mapToDouble(i -> depth[i]).max().orElse(0);
    if (all <= ledge || hangs.get(set.get(set.size() - 1)).layer() - hangs.get(set.get(0)).layer() < STEPS) {
      return all;
    }
    List<Integer> order = set.stream().filter(i -> depth[i] > 0)
        .sorted(Comparator.comparingDouble((Integer i) -> -depth[i])).toList();
    return new FirmGround(specimen.facetTree(), layer, hangs.get(set.get(0)))
        .reach(order.stream().map(hangs::get).toList(), order.stream().mapToDouble(i -> depth[i]).toArray());
  }

  private void join() {
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < hangs.size(); i++) {
      if (i == 0 || hangs.get(i).layer() != hangs.get(i - 1).layer()) {
        starts.add(i);
      }
      List<Hang> under = new ArrayList<>();
      double before = 0;
      for (int row = starts.size() - 1; row >= 0
          && hangs.get(starts.get(row)).layer() >= hangs.get(i).layer() - LOOK_BACK; row--) {
        int end = row + 1 < starts.size() ? starts.get(row + 1) : i;
        before = Math.max(before, joinTo(i, starts.get(row), end, under));
      }
      depth[i] = depth(hangs.get(i), before, under);
    }
  }

  /** Joins a piece to those of one layer; the greatest depth among those it goes on from, which are collected. */
  private double joinTo(int i, int from, int to, List<Hang> under) {
    Hang hang = hangs.get(i);
    double before = 0;
    double last = hang.piece().maxX() + TOUCH;
    for (int j = firstNear(hang, from, to); j < to && hangs.get(j).piece().minX() <= last; j++) {
      if (isOn(hang, hangs.get(j))) {
        together.join(i, j);
        if (hangs.get(j).layer() < hang.layer()) {
          under.add(hangs.get(j));
          before = Math.max(before, depth[j]);
        }
      }
    }
    return before;
  }

  /** The first piece of a layer, its pieces standing by least x, whose least x lies no further off than any is wide. */
  private int firstNear(Hang hang, int from, int to) {
    double least = hang.piece().minX() - TOUCH - widest;
    int low = from;
    int high = to;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (hangs.get(middle).piece().minX() < least) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether a piece goes on from a lower one, or one beside it: a layer apart at most, or steeper than the limit. */
  private boolean isOn(Hang upper, Hang lower) {
    int apart = upper.layer() - lower.layer();
    return (apart <= 1 || upper.depth() > apart * layer * tangent) && isNear(upper, lower)
        && upper.rim().touches(lower.rim(), TOUCH);
  }

  private static boolean isNear(Hang a, Hang b) {
    return a.piece().minX() <= b.piece().maxX() + TOUCH && a.piece().maxX() >= b.piece().minX() - TOUCH
        && a.piece().minY() <= b.piece().maxY() + TOUCH && a.piece().maxY() >= b.piece().minY() - TOUCH;
  }

  /**
   * How far a piece stands out in all: on top of what it goes on from, unless firm ground alongside is nearer, as for a
   * stroke cut into a wall or the steps of a ramp round a column.
   */
  private double depth(Hang hang, double before, List<Hang> under) {
    if (hang.depth() == 0 || before + hang.depth() <= ledge) {
      return hang.depth() == 0 ? 0 : before + hang.depth();
    }
    double all = before + hang.depth();
    int[] firm = under.isEmpty() ? new int[0] : firm(hang.rim(), under);
    if (firm.length == 0) {
      return all;
    }
    double[] loose = hang.loose().points();
    double most = 0;
    for (int p = 0; p < loose.length && most < all; p += 2) {
      most = Math.max(most, Math.min(all, toFirm(hang.rim(), firm, loose[p], loose[p + 1])));
    }
    return most;
  }

  private static double toFirm(Rim rim, int[] firm, double x, double y) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int e : firm) {
      nearest = Math.min(nearest, rim.distance(e, x, y));
    }
    return nearest;
  }

  /** The carried edges that do not lie on what hangs itself. */
  private static int[] firm(Rim rim, List<Hang> under) {
    return IntStream.range(0, rim.size()).filter(e -> rim.isCarried(e)
        && isFirm((rim.x0(e) + rim.x1(e)) / 2, (rim.y0(e) + rim.y1(e)) / 2, under)).toArray();
  }

  private static boolean isFirm(double x, double y, List<Hang> under) {
    return under.stream().allMatch(hang -> !hang.rim().isWithin(TOUCH, x, y) && !hang.piece().holds(x, y));
  }
}
