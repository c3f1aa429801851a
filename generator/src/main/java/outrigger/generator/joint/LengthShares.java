package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import outrigger.generator.joint.LengthSearch.Cost;
import outrigger.generator.joint.LengthSearch.Found;
import outrigger.generator.joint.LengthSearch.Need;
import outrigger.generator.joint.LengthSearch.Supply;

/** Shares joints out over a set of lengths, none of which can be spared. */
final class LengthShares {
  private final List<Supply> supplies;
  private final List<Need> needs;
  private final List<Integer> cover;
  private final int demand;

  /**
   * Joints shared out so far.
   *
   * @param used screws of each length that is on hand, but perhaps not often enough
   * @param toBuy screws of lengths that are not on hand at all
   * @param choices length of each joint so far, by number of the joint
   */
  private record Share(List<Integer> used, int toBuy, long excess, Map<Integer, Integer> choices) {
    private static final Comparator<Share> ORDER = Comparator.comparingInt(Share::toBuy)
        .thenComparingLong(Share::excess);
  }

  LengthShares(List<Supply> supplies, List<Need> needs, List<Integer> cover) {
    this.supplies = supplies;
    this.needs = needs;
    this.cover = cover;
    this.demand = needs.stream().mapToInt(Need::count).sum();
  }

  Found best() {
    Map<List<Integer>, Share> shares = new LinkedHashMap<>();
    List<Integer> none = cover.stream().map(length -> 0).toList();
    shares.put(none, new Share(none, 0, 0, Map.of()));
    for (List<Integer> unit : units()) {
      Map<List<Integer>, Share> next = new LinkedHashMap<>();
      for (Share share : shares.values()) {
        for (Map<Integer, Integer> choice : choices(unit)) {
          Share more = with(share, choice);
          next.merge(more.used(), more, (a, b) -> Share.ORDER.compare(b, a) < 0 ? b : a);
        }
      }
      shares = next;
    }
    return shares.values().stream().map(this::found).min(Comparator.comparing(Found::cost)).orElseThrow();
  }

  /** Joints that are counted together: those of a set, or one alone. */
  private List<List<Integer>> units() {
    Map<Integer, List<Integer>> units = new TreeMap<>();
    for (int i = 0; i < needs.size(); i++) {
      units.computeIfAbsent(needs.get(i).set(), set -> new ArrayList<>()).add(i);
    }
    return List.copyOf(units.values());
  }

  /** Every way to give each joint of a unit a length of the set. */
  private List<Map<Integer, Integer>> choices(List<Integer> unit) {
    List<Map<Integer, Integer>> all = List.of(Map.of());
    for (int joint : unit) {
      List<Map<Integer, Integer>> more = new ArrayList<>();
      for (Map<Integer, Integer> choice : all) {
        for (int length : cover) {
          if (needs.get(joint).excess().containsKey(length)) {
            Map<Integer, Integer> with = new TreeMap<>(choice);
            with.put(joint, length);
            more.add(with);
          }
        }
      }
      all = more;
    }
    return all;
  }

  private Share with(Share share, Map<Integer, Integer> choice) {
    List<Integer> used = new ArrayList<>(share.used());
    int toBuy = share.toBuy();
    long excess = share.excess();
    for (int i = 0; i < cover.size(); i++) {
      int length = cover.get(i);
      int count = choice.entrySet().stream().filter(e -> e.getValue() == length)
          .mapToInt(e -> needs.get(e.getKey()).count()).max().orElse(0);
      int onHand = supplies.get(length).onHand();
      if (onHand == 0) {
        toBuy += count;
      } else if (onHand < demand) {
        used.set(i, used.get(i) + count);
      }
    }
    for (Map.Entry<Integer, Integer> e : choice.entrySet()) {
      excess += needs.get(e.getKey()).excess().get(e.getValue());
    }
    Map<Integer, Integer> choices = new TreeMap<>(share.choices());
    choices.putAll(choice);
    return new Share(List.copyOf(used), toBuy, excess, choices);
  }

  private Found found(Share share) {
    int odd = (int) cover.stream().filter(length -> supplies.get(length).odd()).count();
    int of = 0;
    int toBuy = share.toBuy();
    for (int i = 0; i < cover.size(); i++) {
      int onHand = supplies.get(cover.get(i)).onHand();
      int lacking = Math.max(0, share.used().get(i) - onHand);
      of += onHand == 0 || lacking > 0 ? 1 : 0;
      toBuy += lacking;
    }
    return new Found(new Cost(cover.size(), odd, of, toBuy, share.excess()), List.copyOf(share.choices().values()),
        List.of());
  }
}
