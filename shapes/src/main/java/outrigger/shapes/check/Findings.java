package outrigger.shapes.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import outrigger.shapes.num.Grid;

/** Collects what is found: counts all of it, keeps the first {@value #LISTED} of each rule. */
final class Findings {
  static final int LISTED = 20;

  private final Map<Rule, List<Finding>> kept = new EnumMap<>(Rule.class);
  private final Map<Rule, Integer> counts = new EnumMap<>(Rule.class);
  private final List<String> notExamined = new ArrayList<>();

  /** A fault at a place given in grid units; its words are made only if it is listed. */
  void add(Rule rule, double x, double y, double z, Supplier<String> message) {
    if (counts.merge(rule, 1, Integer::sum) <= LISTED) {
      kept.computeIfAbsent(rule, r -> new ArrayList<>())
          .add(new Finding(rule.label(), x * Grid.STEP, y * Grid.STEP, z * Grid.STEP, message.get(), rule.advice()));
    }
  }

  /** A fault at the middle of two vertices. */
  void addBetween(Rule rule, Surface s, int a, int b, Supplier<String> message) {
    add(rule, (s.x(a) + s.x(b)) / 2.0, (s.y(a) + s.y(b)) / 2.0, (s.z(a) + s.z(b)) / 2.0, message);
  }

  /** A fault at a vertex. */
  void addAt(Rule rule, Surface s, int v, Supplier<String> message) {
    add(rule, s.x(v), s.y(v), s.z(v), message);
  }

  /** A fault of a facet, placed at its middle. */
  void addFacet(Rule rule, Surface s, int facet, Supplier<String> message) {
    int a = s.corner(facet, 0);
    int b = s.corner(facet, 1);
    int c = s.corner(facet, 2);
    add(rule, ((double) s.x(a) + s.x(b) + s.x(c)) / 3, ((double) s.y(a) + s.y(b) + s.y(c)) / 3,
        ((double) s.z(a) + s.z(b) + s.z(c)) / 3, message);
  }

  /** Something that was left out, and why. */
  void skip(String what) {
    notExamined.add(what);
  }

  int count(Rule rule) {
    return counts.getOrDefault(rule, 0);
  }

  boolean isClean() {
    return counts.isEmpty() && notExamined.isEmpty();
  }

  List<Finding> list() {
    return kept.values().stream().flatMap(List::stream).toList();
  }

  List<Tally> tallies() {
    return counts.entrySet().stream().map(e -> new Tally(e.getKey().label(), e.getValue())).toList();
  }

  List<String> notExamined() {
    return notExamined;
  }
}
