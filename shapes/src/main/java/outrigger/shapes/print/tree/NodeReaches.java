package outrigger.shapes.print.tree;

import outrigger.shapes.print.facet.Cones;
import outrigger.shapes.print.facet.Extremes;

/** The greatest reach ({@link Cones}) of the facets below each node of a tree, worked out where it is asked for. */
final class NodeReaches {
  private final FacetTree tree;
  private final Cones cones;
  /** Of the nodes asked for; 0 for the others. Two threads may work out the same one. */
  private final float[] known;

  NodeReaches(FacetTree tree, Cones cones) {
    this.tree = tree;
    this.cones = cones;
    known = new float[2 * tree.leaves()];
  }

  /** No less than that of any facet below a node; 1 for an empty one. */
  float of(int node) {
    if (known[node] == 0) {
      known[node] = node < tree.leaves() ? Extremes.greater(of(2 * node), of(2 * node + 1)) : ofLeaf(node);
    }
    return known[node];
  }

  private float ofLeaf(int leaf) {
    double most = 1;
    int end = tree.endSlot(leaf);
    for (int slot = tree.firstSlot(leaf); slot < end; slot++) {
      most = Extremes.greater(most, cones.reach(tree.facet(slot)));
    }
    return Math.nextUp((float) most);
  }
}
