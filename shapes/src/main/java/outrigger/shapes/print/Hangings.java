package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Joins pieces of different layers that hang together. */
final class Hangings {
  /** Pieces so many layers apart may still be one slope made of steps. */
  private static final int LOOK_BACK = 5;
  /** Pieces nearer than this touch, mm. */
  private static final double TOUCH = 0.01;

  private final List<Hang> hangs;
  private final double layer;
  private final double tangent;
  private final int[] parent;

  private Hangings(List<Hang> hangs, double layer, double overhang) {
    this.hangs = hangs;
    this.layer = layer;
    tangent = StrictMath.tan(StrictMath.toRadians(Math.min(89.9, overhang + Undersides.PLAY)));
    parent = new int[hangs.size()];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
    }
  }

  /**
   * What hangs together, in order of the lowest pieces.
   *
   * @param hangs from the bed up
   * @param layer height of a layer, mm
   * @param overhang limit, degrees from the vertical
   */
  static List<Hanging> of(List<Hang> hangs, double layer, double overhang) {
    Hangings all = new Hangings(hangs, layer, overhang);
    all.join();
    Map<Integer, List<Hang>> sets = new TreeMap<>();
    for (int i = 0; i < hangs.size(); i++) {
      sets.computeIfAbsent(all.find(i), first -> new ArrayList<>()).add(hangs.get(i));
    }
    return sets.values().stream().map(set -> new Hanging(set, layer)).toList();
  }

  private void join() {
    int window = 0;
    for (int i = 0; i < hangs.size(); i++) {
      while (hangs.get(window).layer() < hangs.get(i).layer() - LOOK_BACK) {
        window++;
      }
      for (int j = window; j < i && hangs.get(j).layer() < hangs.get(i).layer(); j++) {
        if (find(i) != find(j) && isOn(hangs.get(i), hangs.get(j))) {
          int a = find(i);
          int b = find(j);
          parent[Math.max(a, b)] = Math.min(a, b);
        }
      }
    }
  }

  /** Whether a piece goes on from a lower one: on the next layer, or by a step steeper than the limit. */
  private boolean isOn(Hang upper, Hang lower) {
    int apart = upper.layer() - lower.layer();
    return (apart == 1 || upper.depth() > apart * layer * tangent) && upper.piece().isWithin(TOUCH, lower.piece());
  }

  private int find(int i) {
    int at = i;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }
}
