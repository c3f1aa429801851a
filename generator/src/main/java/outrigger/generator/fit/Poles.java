package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.magnet.Facing;
import outrigger.generator.truck.MountParams;

/**
 * Which pole looks up in each pocket, so that the body is held only where it belongs.
 *
 * <p>A wrong place is one in which two or more of the body's magnets, all turned by half a turn or not, come to lie over
 * mounts. It is shut out where more of its pairs push than pull. Up to 14 mounts, every choice of poles is tried.
 *
 * @param up the pole that looks up, in mount and body alike, by site
 * @param wrong wrong places there are
 * @param full of these, the ones in which every one of the body's magnets meets a mount
 * @param open of these, the ones that poles cannot shut out, in words
 */
public record Poles(Map<Site, Pole> up, int wrong, int full, List<String> open) {
  /** Most mounts for which all choices are tried; beyond, stations alternate at first and are then bettered one by one. */
  private static final int MOST = 14;
  private static final int MOST_CLIMBED = 40;
  /** Nearer than this, magnets pull each other into place, mm; common practice. */
  private static final double NEAR = 3;

  public Poles {
    up = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(up));
    open = List.copyOf(open);
  }

  /** A wrong place: for each of the body's magnets the mount it lies over, or -1. */
  private record Wrong(boolean isTurned, double x, double y, List<Integer> over) {
    int met() {
      return (int) over.stream().filter(j -> j >= 0).count();
    }

    String words() {
      return (isTurned ? "turned back to front" : "the right way round") + ", moved x " + Words.number(round(x)) + ", y "
          + Words.mm(round(y)) + ", " + met() + " of " + over.size() + " meet";
    }

    private static double round(double v) {
      return Math.rint(v * 10) / 10 + 0.0;
    }
  }

  static Poles of(List<Site> sites) {
    List<Wrong> wrong = wrong(sites);
    int n = sites.size();
    BitSet best = n > MOST ? climbed(sites, wrong) : best(sites, wrong);
    Map<Site, Pole> up = new LinkedHashMap<>();
    for (int i = 0; i < n; i++) {
      up.put(sites.get(i), best.get(i) ? Pole.S : Pole.N);
    }
    return new Poles(up, wrong.size(), (int) wrong.stream().filter(w -> w.met() == n).count(),
        wrong.stream().filter(w -> net(sites, w, best) <= 0).map(Wrong::words).toList());
  }

  /** Of all choices, a bit for each site whose south pole looks up. */
  private static BitSet best(List<Site> sites, List<Wrong> wrong) {
    BitSet best = new BitSet();
    long bestScore = Long.MIN_VALUE;
    for (int choice = 0; choice < 1 << sites.size(); choice++) {
      BitSet poles = BitSet.valueOf(new long[] {choice});
      if (isAllowed(sites, poles)) {
        long score = score(sites, wrong, poles);
        if (score > bestScore) {
          bestScore = score;
          best = poles;
        }
      }
    }
    return best;
  }

  /** From stations that alternate on, one site after the other turned about as long as that shuts out more. */
  private static BitSet climbed(List<Site> sites, List<Wrong> wrong) {
    BitSet poles = new BitSet();
    List<MountParams> stations = sites.stream().map(site -> site.mount().record()).distinct().toList();
    for (int i = 0; i < sites.size(); i++) {
      Pole given = sites.get(i).mount().record().pole();
      poles.set(i, given == Pole.NONE ? stations.indexOf(sites.get(i).mount().record()) % 2 == 1 : given == Pole.S);
    }
    long score = score(sites, wrong, poles);
    for (boolean better = sites.size() <= MOST_CLIMBED; better;) {
      better = false;
      for (int i = 0; i < sites.size(); i++) {
        poles.flip(i);
        long turned = isAllowed(sites, poles) ? score(sites, wrong, poles) : Long.MIN_VALUE;
        better |= turned > score;
        if (turned > score) {
          score = turned;
        } else {
          poles.flip(i);
        }
      }
    }
    return poles;
  }

  private static boolean isAllowed(List<Site> sites, BitSet poles) {
    for (int i = 0; i < sites.size(); i++) {
      Pole given = sites.get(i).mount().record().pole();
      if (given != Pole.NONE && (given == Pole.S) != poles.get(i)) {
        return false;
      }
    }
    return true;
  }

  /** Wrong places shut out count most, then how firmly, then that both sides of a station are alike. */
  private static long score(List<Site> sites, List<Wrong> wrong, BitSet poles) {
    long shut = 0;
    long push = 0;
    for (Wrong w : wrong) {
      int net = net(sites, w, poles);
      // A place where twice as many magnets meet is far likelier to be taken for the right one.
      shut += net > 0 ? 1L << 2 * Math.min(w.met(), MOST) : 0;
      push += net;
    }
    long alike = 0;
    for (int i = 1; i < sites.size(); i++) {
      boolean sameStation = sites.get(i).mount().equals(sites.get(i - 1).mount());
      alike += sameStation && poles.get(i) == poles.get(i - 1) ? 1 : 0;
    }
    return (shut * 1000 + push) * 100 + alike;
  }

  /** Pairs that push less pairs that pull; steel pulls whatever looks at it. */
  private static int net(List<Site> sites, Wrong wrong, BitSet poles) {
    int net = 0;
    for (int i = 0; i < sites.size(); i++) {
      int j = wrong.over().get(i);
      if (j >= 0) {
        boolean steel = sites.get(i).mount().record().facing() == Facing.STEEL;
        net += !steel && poles.get(i) != poles.get(j) ? 1 : -1;
      }
    }
    return net;
  }

  private static List<Wrong> wrong(List<Site> sites) {
    Map<String, Wrong> all = new LinkedHashMap<>();
    for (boolean turned : List.of(true, false)) {
      int sign = turned ? -1 : 1;
      for (Site from : sites) {
        for (Site to : sites) {
          double x = to.x() - sign * from.x();
          double y = to.y() - sign * from.y();
          List<Integer> over = over(sites, sign, x, y);
          boolean isHome = !turned && Math.hypot(x, y) < NEAR;
          if (!isHome && over.stream().filter(j -> j >= 0).count() >= Math.min(2, sites.size())) {
            all.putIfAbsent(turned + over.toString(), new Wrong(turned, x, y, over));
          }
        }
      }
    }
    return new ArrayList<>(all.values());
  }

  private static List<Integer> over(List<Site> sites, int sign, double x, double y) {
    List<Integer> over = new ArrayList<>();
    for (Site site : sites) {
      int found = -1;
      for (int j = 0; j < sites.size(); j++) {
        if (Math.hypot(sign * site.x() + x - sites.get(j).x(), sign * site.y() + y - sites.get(j).y()) < NEAR) {
          found = j;
        }
      }
      over.add(found);
    }
    return over;
  }
}
