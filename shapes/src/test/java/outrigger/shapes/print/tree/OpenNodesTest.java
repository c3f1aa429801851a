package outrigger.shapes.print.tree;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.FinerMesh;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.ball.Touching;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** No ball is held that touches a facet of an open node, as the probe of widths sees it. */
class OpenNodesTest {
  private static final double WIDTH = 2;
  private static final double LONGEST_EDGE = 0.8;
  private static final double ROUNDING = 1e-3;
  private static final int GROOVES = 20;
  /** One facet in so many is measured at. */
  private static final int STRIDE = 61;

  @Test
  void groovesOfARod_areOpen() {
    FacetTree tree = tree(grooved());
    OpenNodes open = new OpenNodes(tree, WIDTH / 2, Facing.HELD);
    assertTrue(IntStream.range(1, tree.leaves()).filter(open::asks)
        .anyMatch(node -> holdsSide(tree, node) && open.isOpen(node)));
  }

  /** Three flat sides hold a ball though no two of them stand opposite. */
  @Test
  void whatHoldsABall_isNotOpen() {
    Solid holed = Specimens.box(0, 0, 0, 12, 9, 4).cut(
        Prism.of(Profile.polygon(0, 0, 2, 0, 1, Math.sqrt(3)), -1, 5).move(2, 2, 0),
        Prism.of(Profile.hole(1.4), -1, 10).turn(Axis.X, -90).move(6, 0, 2), Specimens.box(8, -1, 2, 0.5, 11, 3));
    for (Solid part : new Solid[] {holed, holed.turn(Axis.X, 25).turn(Axis.Z, 40), grooved()}) {
      for (boolean inward : new boolean[] {false, true}) {
        assertHeldAreShut(tree(part), inward);
      }
    }
  }

  private static void assertHeldAreShut(FacetTree tree, boolean inward) {
    OpenNodes open = new OpenNodes(tree, WIDTH, Facing.HELD);
    Touching touching = new Touching(tree);
    BallProbe probe = new BallProbe(tree, WIDTH, WIDTH);
    int[] nodes = nodes(tree, open);
    for (int slot = 0; slot < tree.size(); slot += STRIDE) {
      Vec middle = tree.corner(slot, 0).plus(tree.corner(slot, 1), 1).plus(tree.corner(slot, 2), 1).times(1.0 / 3);
      probe.reset();
      BallProbe.Ball ball = probe.measure(slot, middle, tree.normal(slot).times(inward ? -1 : 1));
      for (int other = 0; ball.held() && ball.width() < WIDTH && other < tree.size(); other++) {
        double far = touching.foot(other, ball.middle()).distance(ball.middle());
        assertFalse(far < ball.width() / 2 + ROUNDING && open.isOpen(nodes[other]),
            "a ball of " + ball.width() + " mm about " + ball.middle() + " rests on an open node");
      }
    }
  }

  /** The node of each slot. */
  private static int[] nodes(FacetTree tree, OpenNodes open) {
    int[] nodes = new int[tree.size()];
    for (int leaf = tree.leaves(); leaf < 2 * tree.leaves(); leaf++) {
      int node = leaf;
      while (!open.asks(node)) {
        node /= 2;
      }
      for (int slot = tree.firstSlot(leaf); slot < tree.endSlot(leaf); slot++) {
        nodes[slot] = node;
      }
    }
    return nodes;
  }

  /** Whether a node has facets of the rod's side, and none of its ends. */
  private static boolean holdsSide(FacetTree tree, int node) {
    return tree.low(node, 2) > 1 && tree.high(node, 2) < 7;
  }

  private static FacetTree tree(Solid part) {
    return FacetTree.of(FinerMesh.of(Specimens.proven(part), LONGEST_EDGE).mesh());
  }

  /** A rod with sharp grooves along it, 1.6 mm apart, 0.8 mm deep. */
  private static Solid grooved() {
    double[] star = IntStream.range(0, 2 * GROOVES).boxed().flatMapToDouble(i -> {
      double angle = Math.PI * i / GROOVES;
      double r = i % 2 == 0 ? 5 : 4.2;
      return DoubleStream.of(r * Math.cos(angle), r * Math.sin(angle));
    }).toArray();
    return Prism.of(Profile.polygon(star), 0, 8);
  }
}
