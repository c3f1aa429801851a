package outrigger.generator.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import outrigger.generator.joint.LengthSearch.Cost;
import outrigger.generator.joint.LengthSearch.Found;
import outrigger.generator.joint.LengthSearch.Need;
import outrigger.generator.joint.LengthSearch.Supply;

/** The choice of lengths against every assignment there is, costed by arithmetic of its own. */
class LengthSearchPropertyTest {
  private static final long SEED = 20_261_125L;
  private static final int CASES = 2000;

  @Test
  void run_smallCases_areAsGoodAsTheBestOfAllAssignments() {
    Random random = new Random(SEED);
    for (int i = 0; i < CASES; i++) {
      List<Supply> supplies = supplies(random);
      List<Need> needs = needs(random, supplies.size());
      Found found = new LengthSearch(supplies, needs).run();
      String where = "seed " + SEED + ", case " + i + ": " + supplies + needs + found;
      for (int joint = 0; joint < needs.size(); joint++) {
        assertTrue(needs.get(joint).excess().containsKey(found.lengths().get(joint)), where);
      }
      assertEquals(cost(supplies, needs, found.lengths()), found.cost(), where);
      assertEquals(best(supplies, needs, new ArrayList<>()), found.cost(), where);
      assertTrue(found.apart().size() <= found.cost().articles(), where);
    }
  }

  /** Ranges of one row of lengths: as many joints apart as lengths, so the sentence that proves it is always there. */
  @Test
  void run_ranges_findAsManyJointsApartAsLengths() {
    Random random = new Random(SEED);
    for (int i = 0; i < CASES; i++) {
      List<Need> needs = new ArrayList<>();
      for (int joint = 0; joint < 1 + random.nextInt(6); joint++) {
        int from = random.nextInt(8);
        TreeMap<Integer, Long> excess = new TreeMap<>();
        for (int length = from; length <= Math.min(7, from + random.nextInt(3)); length++) {
          excess.put(length, (long) length);
        }
        needs.add(new Need(excess, 2, joint));
      }
      Found found = new LengthSearch(java.util.Collections.nCopies(8, new Supply(false, 0)), needs).run();
      String where = "seed " + SEED + ", case " + i + ": " + needs + found;
      assertEquals(found.cost().articles(), found.apart().size(), where);
      Set<Integer> seen = new TreeSet<>();
      for (int joint : found.apart()) {
        needs.get(joint).excess().keySet().forEach(length -> assertTrue(seen.add(length), where));
      }
    }
  }

  private static List<Supply> supplies(Random random) {
    List<Supply> supplies = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(4); i++) {
      supplies.add(new Supply(random.nextInt(4) == 0, random.nextBoolean() ? 0 : random.nextInt(12)));
    }
    return supplies;
  }

  private static List<Need> needs(Random random, int lengths) {
    List<Need> needs = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int joint = 0; joint < count; joint++) {
      TreeMap<Integer, Long> excess = new TreeMap<>();
      excess.put(random.nextInt(lengths), (long) random.nextInt(5000));
      for (int more = 0; more < random.nextInt(3); more++) {
        excess.put(random.nextInt(lengths), (long) random.nextInt(5000));
      }
      boolean inSet = joint > 0 && random.nextInt(3) == 0;
      needs.add(new Need(excess, 1 + random.nextInt(4), inSet ? needs.get(joint - 1).set() : joint));
    }
    return needs;
  }

  private static Cost best(List<Supply> supplies, List<Need> needs, List<Integer> lengths) {
    if (lengths.size() == needs.size()) {
      return cost(supplies, needs, lengths);
    }
    Cost best = null;
    for (int length : needs.get(lengths.size()).excess().keySet()) {
      List<Integer> more = new ArrayList<>(lengths);
      more.add(length);
      Cost cost = best(supplies, needs, more);
      best = best == null || cost.compareTo(best) < 0 ? cost : best;
    }
    return best;
  }

  private static Cost cost(List<Supply> supplies, List<Need> needs, List<Integer> lengths) {
    Map<Integer, Map<Integer, Integer>> counts = new TreeMap<>();
    long excess = 0;
    for (int joint = 0; joint < needs.size(); joint++) {
      Need need = needs.get(joint);
      counts.computeIfAbsent(lengths.get(joint), length -> new TreeMap<>())
          .merge(need.set(), need.count(), Math::max);
      excess += need.excess().get(lengths.get(joint));
    }
    int odd = 0;
    int of = 0;
    int toBuy = 0;
    for (Map.Entry<Integer, Map<Integer, Integer>> e : counts.entrySet()) {
      int lacking = e.getValue().values().stream().mapToInt(Integer::intValue).sum()
          - supplies.get(e.getKey()).onHand();
      odd += supplies.get(e.getKey()).odd() ? 1 : 0;
      of += lacking > 0 ? 1 : 0;
      toBuy += Math.max(0, lacking);
    }
    return new Cost(counts.size(), odd, of, toBuy, excess);
  }
}
