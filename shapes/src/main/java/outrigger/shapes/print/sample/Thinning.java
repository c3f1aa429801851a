package outrigger.shapes.print.sample;

import outrigger.shapes.print.tree.FacetTree;

/**
 * Leaves out samples of narrow facets that have another close by that faces nearly the same way: long narrow facets, as
 * of a round post, would else have far more samples than its surface needs. What is kept stands for what is left out.
 */
public final class Thinning {
  /** cos 20 degrees. */
  private static final double ALIKE = 0.94;
  /** How many of the last ones kept are looked at: those near in a list sorted along a curve are mostly near in place. */
  private static final int BACK = 12;

  /** Parts of the spacing. */
  private static final double NARROW = 0.5;
  private static final double NEAR = 0.8;

  private final FacetTree tree;
  private final double narrowest;
  private final double apart;
  /** Whether facets are narrow, as far as they were asked for: the samples of one come back again and again. */
  private final byte[] known;

  /** @param spacing of samples, mm */
  public Thinning(FacetTree tree, double spacing) {
    this.tree = tree;
    narrowest = NARROW * spacing;
    apart = NEAR * spacing;
    known = new byte[tree.size()];
  }

  private boolean isNarrow(int slot) {
    if (known[slot] == 0) {
      known[slot] = (byte) (tree.breadth(slot) < narrowest ? 1 : 2);
    }
    return known[slot] == 1;
  }

  /**
   * Thins a sorted list.
   *
   * @param standIn for each slot the one whose samples stand for it, itself at first: changed where none is left
   */
  public void thin(SampleList list, int[] standIn) {
    int kept = 0;
    boolean[] isNarrow = new boolean[list.size()];
    for (int i = 0; i < list.size(); i++) {
      int slot = list.slot(i);
      boolean narrow = isNarrow(slot);
      int near = narrow ? near(list, i, kept, isNarrow) : -1;
      if (near < 0) {
        isNarrow[kept] = narrow;
        list.move(i, kept++);
      } else {
        list.merge(i, near);
        standIn[slot] = list.slot(near);
      }
    }
    list.cut(kept);
    for (int i = 0; i < kept; i++) {
      standIn[list.slot(i)] = list.slot(i);
    }
  }

  /** One of the last kept that is near a sample and alike, or -1. */
  private int near(SampleList list, int i, int kept, boolean... isNarrow) {
    int slot = list.slot(i);
    for (int k = kept - 1; k >= Math.max(0, kept - BACK); k--) {
      if (isNarrow[k] && list.slot(k) != slot && isNear(list, i, k) && isAlike(slot, list.slot(k))) {
        return k;
      }
    }
    return -1;
  }

  private boolean isNear(SampleList list, int i, int k) {
    double dx = list.x(i) - list.x(k);
    double dy = list.y(i) - list.y(k);
    double dz = list.z(i) - list.z(k);
    return dx * dx + dy * dy + dz * dz < apart * apart;
  }

  private boolean isAlike(int slot, int other) {
    return tree.alongNormal(slot, tree.normalX(other), tree.normalY(other), tree.normalZ(other)) > ALIKE;
  }
}
