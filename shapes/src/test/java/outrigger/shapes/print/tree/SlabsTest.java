package outrigger.shapes.print.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.FinerMesh;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

class SlabsTest {
  private static final double ROUNDING = FacingNodes.ROUNDING;
  private static final double LONGEST_EDGE = 1;

  private static FacetTree tree(Solid part) {
    return FacetTree.of(FinerMesh.of(Specimens.proven(part), LONGEST_EDGE).mesh());
  }

  private static double along(FacetTree tree, int node, int slot, int corner) {
    Slabs slabs = tree.slabs();
    return tree.along(slot, corner, slabs.middle(node, 0), slabs.middle(node, 1), slabs.middle(node, 2));
  }

  @Test
  void slabs_holdAllThatLiesBelow() {
    FacetTree tree = tree(Solid.union(Revolution.sphere(5, 32), Specimens.box(2, 3, 1, 7, 5, 4)).turn(Axis.X, 31)
        .turn(Axis.Y, 20).move(40, -30, 20));
    for (int leaf = tree.leaves(); leaf < 2 * tree.leaves(); leaf++) {
      for (int slot = tree.firstSlot(leaf); slot < tree.endSlot(leaf); slot++) {
        for (int node = leaf; node > 0; node /= 2) {
          for (int k = 0; k < 3; k++) {
            double along = along(tree, node, slot, k);
            assertTrue(along > tree.slabs().least(node) - ROUNDING && along < tree.slabs().most(node) + ROUNDING,
                "node " + node + ": " + along + " of " + tree.slabs().least(node) + " to " + tree.slabs().most(node));
          }
        }
      }
    }
  }

  /** A leaning face's slab has no thickness. Each face of this box looks to another side: no leaf holds facets of two. */
  @Test
  void slabsOfLeaves_ofALeaningBox_areFlat() {
    FacetTree tree = tree(Specimens.box(0, 0, 0, 8, 9, 10).turn(Axis.X, 25).turn(Axis.Z, 20));
    for (int leaf = tree.leaves(); leaf < 2 * tree.leaves(); leaf++) {
      if (tree.firstSlot(leaf) < tree.endSlot(leaf)) {
        assertEquals(tree.slabs().least(leaf), tree.slabs().most(leaf), ROUNDING);
      }
    }
  }
}
