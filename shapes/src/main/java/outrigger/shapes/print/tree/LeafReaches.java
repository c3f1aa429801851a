package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Extremes;

/** The greatest reach ({@link Cones}) of the facets of each leaf of a tree, worked out where it is asked for. */
final class LeafReaches {
  private final FacetTree tree;
  private final Cones cones;
  /** Of the leaves asked for; 0 for the others. Two threads may work out the same one. */
  private final float[] known;

  LeafReaches(FacetTree tree, Cones cones) {
    this.tree = tree;
    this.cones = cones;
    known = new float[tree.leaves()];
  }

  /** No less than that of any facet of a leaf. */
  float of(int leaf) {
    int number = leaf - tree.leaves();
    if (known[number] == 0) {
      double most = 1;
      int end = tree.endSlot(leaf);
      for (int slot = tree.firstSlot(leaf); slot < end; slot++) {
        most = Extremes.greater(most, cones.reach(tree.facet(slot)));
      }
      known[number] = Math.nextUp((float) most);
    }
    return known[number];
  }
}
