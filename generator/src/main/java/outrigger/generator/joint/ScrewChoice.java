package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.presets.Shelf;

/**
 * Screws for all joints of a truck: the fewest different articles, of those the fewest odd ones, then what is on hand,
 * then what stands out least.
 *
 * @param joints every joint with its length, in the order given
 * @param proofs one sentence for each screw that needs several lengths, why fewer will not do
 */
public record ScrewChoice(List<Chosen> joints, List<String> proofs) {
  private static final double PER_MM = 1000;

  public ScrewChoice {
    joints = List.copyOf(joints);
    proofs = List.copyOf(proofs);
  }

  /**
   * Chooses.
   *
   * @param stock what is on hand; its lengths come in beside those one can buy
   * @throws InputException with a fault for each joint that no length suits
   */
  public static ScrewChoice of(List<NamedJoint> joints, Stock stock, Shelf shelf) {
    List<Fault> faults = joints.stream().filter(joint -> options(joint.joint(), stock).isEmpty())
        .map(joint -> new NoScrew(joint, all(joint.joint(), stock), shelf).fault()).toList();
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
    Map<String, List<Integer>> byScrew = new LinkedHashMap<>();
    for (int i = 0; i < joints.size(); i++) {
      byScrew.computeIfAbsent(joints.get(i).joint().screw().name(), screw -> new ArrayList<>()).add(i);
    }
    Map<Integer, Chosen> chosen = new TreeMap<>();
    List<String> proofs = new ArrayList<>();
    byScrew.forEach((screw, numbers) -> {
      List<NamedJoint> its = numbers.stream().map(joints::get).toList();
      List<Double> lengths = List.copyOf(all(its.get(0).joint(), stock));
      LengthSearch.Found found = search(its, lengths, stock);
      for (int i = 0; i < its.size(); i++) {
        chosen.put(numbers.get(i), new Chosen(its.get(i), lengths.get(found.lengths().get(i))));
      }
      proofs.add(proof(screw, its, found));
    });
    return new ScrewChoice(List.copyOf(chosen.values()), proofs);
  }

  /** Lengths there are, on hand or to buy, rising. */
  private static TreeSet<Double> all(Joint joint, Stock stock) {
    TreeSet<Double> all = new TreeSet<>(joint.stock().all());
    all.addAll(stock.lengths(joint.screw().name()));
    return all;
  }

  private static List<Double> options(Joint joint, Stock stock) {
    return all(joint, stock).stream().filter(joint::takes).toList();
  }

  private static LengthSearch.Found search(List<NamedJoint> joints, List<Double> lengths, Stock stock) {
    Joint first = joints.get(0).joint();
    List<LengthSearch.Supply> supplies = lengths.stream().map(length -> new LengthSearch.Supply(
        !first.stock().usual().contains(length), stock.count(Articles.of(first.screw(), length).article()))).toList();
    Map<String, Integer> sets = new LinkedHashMap<>();
    List<LengthSearch.Need> needs = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      NamedJoint joint = joints.get(i);
      int set = joint.set().isEmpty() ? i : sets.computeIfAbsent(joint.set(), name -> joints.indexOf(joint));
      TreeMap<Integer, Long> excess = new TreeMap<>();
      for (int l = 0; l < lengths.size(); l++) {
        if (joint.joint().takes(lengths.get(l))) {
          excess.put(l, Math.round(joint.joint().protrusion(lengths.get(l)) * PER_MM));
        }
      }
      needs.add(new LengthSearch.Need(excess, joint.joint().count(), set));
    }
    return new LengthSearch(supplies, needs).run();
  }

  private static String proof(String screw, List<NamedJoint> joints, LengthSearch.Found found) {
    int articles = found.cost().articles();
    if (articles == 1) {
      return "One length of " + screw + " suits all its joints.";
    }
    String begin = "No fewer than " + articles + " lengths of " + screw + " will do: ";
    if (found.apart().size() < articles) {
      return begin + "every set of fewer was tried.";
    }
    List<String> apart = found.apart().stream().map(joints::get).map(joint -> joint.name() + " ("
        + Lengths.words(joint.joint().shortest()) + " to " + Lengths.words(joint.joint().longest()) + " mm)").toList();
    return begin + "no two of these share one: " + String.join("; ", apart) + ".";
  }
}
