package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Chooses lengths of one screw so that every joint has one that suits it: the best choice there is.
 *
 * <p>All sets of one length are tried, then all of two and so on: some joint has no length yet, so one of those that
 * suit it must come in, and each is tried. The first size at which every joint is served is the least, and every set
 * of that size is looked at. Within a set the joints are shared out over the lengths step by step; of shares that use
 * up what is on hand alike, the best is kept. So nothing is left out but what cannot be better.
 */
final class LengthSearch {
  private final List<Supply> supplies;
  private final List<Need> needs;

  /**
   * One length.
   *
   * @param odd whether it is rarely sold
   * @param onHand how many there are
   */
  record Supply(boolean odd, int onHand) {}

  /**
   * One joint.
   *
   * @param excess by number of each length that suits it, how far the screw stands out, micrometres
   * @param count of screws
   * @param set number of the set of joints of which one is used at a time
   */
  record Need(TreeMap<Integer, Long> excess, int count, int set) {}

  /** What a choice costs, the weightiest first. */
  record Cost(int articles, int odd, int toBuyOf, int toBuy, long excess) implements Comparable<Cost> {
    private static final Comparator<Cost> ORDER = Comparator.comparingInt(Cost::articles).thenComparingInt(Cost::odd)
        .thenComparingInt(Cost::toBuyOf).thenComparingInt(Cost::toBuy).thenComparingLong(Cost::excess);

    @Override
    public int compareTo(Cost other) {
      return ORDER.compare(this, other);
    }
  }

  /**
   * The best choice.
   *
   * @param lengths number of the length of each joint
   * @param apart joints no two of which share a length: as many lengths as these are needed
   */
  record Found(Cost cost, List<Integer> lengths, List<Integer> apart) {}

  /** @param needs each with at least one length */
  LengthSearch(List<Supply> supplies, List<Need> needs) {
    this.supplies = List.copyOf(supplies);
    this.needs = List.copyOf(needs);
  }

  Found run() {
    TreeSet<List<Integer>> covers = new TreeSet<>(LengthSearch::compare);
    for (int size = 0; covers.isEmpty(); size++) {
      cover(new TreeSet<>(), size, covers);
    }
    Optional<Found> best = Optional.empty();
    for (List<Integer> cover : covers) {
      Found found = new LengthShares(supplies, needs, cover).best();
      if (best.isEmpty() || found.cost().compareTo(best.get().cost()) < 0) {
        best = Optional.of(found);
      }
    }
    Found found = best.orElseThrow();
    return new Found(found.cost(), found.lengths(), apart());
  }

  private static int compare(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < a.size(); i++) {
      int order = a.get(i).compareTo(b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** Adds so many more lengths to those chosen, in every way that serves all joints. */
  private void cover(TreeSet<Integer> chosen, int more, SortedSet<List<Integer>> covers) {
    Optional<Need> open = needs.stream().filter(need -> need.excess().keySet().stream().noneMatch(chosen::contains))
        .min(Comparator.comparingInt(need -> need.excess().size()));
    if (open.isEmpty()) {
      covers.add(List.copyOf(chosen));
      return;
    }
    if (more > 0) {
      for (int length : open.get().excess().keySet()) {
        chosen.add(length);
        cover(chosen, more - 1, covers);
        chosen.remove(length);
      }
    }
  }

  /** Joints no two of which share a length, taken in the order of their longest. */
  private List<Integer> apart() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparing(i -> needs.get(i).excess().lastKey()));
    List<Integer> apart = new ArrayList<>();
    Set<Integer> taken = new HashSet<>();
    for (int i : order) {
      if (needs.get(i).excess().keySet().stream().noneMatch(taken::contains)) {
        apart.add(i);
        taken.addAll(needs.get(i).excess().keySet());
      }
    }
    return apart;
  }
}
