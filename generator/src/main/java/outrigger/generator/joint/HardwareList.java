package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.param.InputException;
import outrigger.presets.Shelf;

/**
 * Everything a truck is assembled with.
 *
 * @param lines by kind, then by article
 * @param screws the screws' joints, and why there are no fewer articles
 */
public record HardwareList(List<HardwareLine> lines, ScrewChoice screws) {
  public HardwareList {
    lines = List.copyOf(lines);
  }

  /** So many pieces for something; those of a set of joints are used one at a time. */
  private record Use(Piece piece, String what, String set) {}

  /**
   * Adds up what parts need.
   *
   * @throws InputException with a fault for each joint that no length suits
   */
  public static HardwareList of(List<Fitted> parts, Stock stock, Shelf shelf) {
    ScrewChoice screws = ScrewChoice.of(parts.stream().flatMap(part -> part.joints().stream()).toList(), stock, shelf);
    List<Use> uses = new ArrayList<>();
    for (Chosen chosen : screws.joints()) {
      NamedJoint joint = chosen.of();
      uses.add(new Use(chosen.screw().times(joint.joint().count()), joint.name(), joint.set()));
      joint.joint().pieces().forEach(piece -> uses.add(new Use(piece, joint.name(), joint.set())));
    }
    parts.forEach(part -> part.fixings().pieces().forEach(piece -> uses.add(new Use(piece, part.part(), ""))));
    return new HardwareList(lines(uses, stock), screws);
  }

  private static List<HardwareLine> lines(List<Use> uses, Stock stock) {
    Map<String, List<Use>> byArticle = new LinkedHashMap<>();
    uses.forEach(use -> byArticle.computeIfAbsent(use.piece().article(), article -> new ArrayList<>()).add(use));
    return byArticle.entrySet().stream().map(e -> line(e.getKey(), e.getValue(), stock))
        .sorted(Comparator.comparing(HardwareLine::kind).thenComparing(HardwareList::compare)).toList();
  }

  private static HardwareLine line(String article, List<Use> uses, Stock stock) {
    int count = 0;
    Map<String, Integer> sets = new LinkedHashMap<>();
    for (Use use : uses) {
      if (use.set().isEmpty()) {
        count += use.piece().count();
      } else {
        sets.merge(use.set(), use.piece().count(), Math::max);
      }
    }
    int all = count + sets.values().stream().mapToInt(Integer::intValue).sum();
    return new HardwareLine(uses.get(0).piece().kind(), article, all, stock.count(article),
        uses.stream().map(use -> use.piece().count() + " for " + use.what()
            + (use.set().isEmpty() ? "" : " (one of a set)")).toList());
  }

  /** Names in order; screws of one name by length, so that 8 comes before 10. */
  private static int compare(HardwareLine a, HardwareLine b) {
    if (a.kind() != Piece.Kind.SCREW || b.kind() != Piece.Kind.SCREW) {
      return a.article().compareTo(b.article());
    }
    String[] one = a.article().split(" x ");
    String[] other = b.article().split(" x ");
    int order = one[0].compareTo(other[0]);
    return order != 0 ? order : Double.compare(Double.parseDouble(one[1]), Double.parseDouble(other[1]));
  }

  /** Number of different screws. */
  public long articles() {
    return lines.stream().filter(line -> line.kind() == Piece.Kind.SCREW).count();
  }
}
