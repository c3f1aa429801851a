package outrigger.shapes.mesh.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Upright;
import outrigger.shapes.num.Placement;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Cut;
import outrigger.shapes.solid.Placed;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;

/** Gathers the operands of an expression, as far as all of them stand along one axis. */
final class Uprights {
  private final List<Upright> operands = new ArrayList<>();
  private final List<Boolean> cutAway = new ArrayList<>();
  private final ExpressionTree tree = new ExpressionTree();
  /** Whether what is being added is taken away from the whole. */
  private boolean taken;

  private Uprights() {}

  /**
   * The operands of a solid.
   *
   * @return empty where one is not an upright prism, is turned by other than quarters, or stands along another axis
   * @throws outrigger.shapes.num.ShapeException if one lies beyond the grid
   */
  static Optional<Uprights> of(Solid solid) {
    Uprights uprights = new Uprights();
    return uprights.add(solid, Placement.IDENTITY) < 0 ? Optional.empty() : Optional.of(uprights);
  }

  List<Upright> operands() {
    return operands;
  }

  /** Of each operand whether an odd number of cuts takes it away. */
  List<Boolean> cutAway() {
    return cutAway;
  }

  ExpressionTree tree() {
    return tree;
  }

  /** Adds an expression's operands and nodes; returns its node, or -1 where there is an operand of another kind. */
  private int add(Solid solid, Placement placement) {
    if (solid instanceof Placed placed) {
      Placement all = placed.placement().then(placement);
      return all.turnsQuarterly() ? add(placed.solid(), all) : -1;
    } else if (solid instanceof Union union) {
      return node(ExpressionTree.Kind.UNION, union.solids(), placement);
    } else if (solid instanceof Common common) {
      return node(ExpressionTree.Kind.COMMON, common.solids(), placement);
    } else if (solid instanceof Cut cut) {
      return addCut(cut, placement);
    }
    return solid instanceof Prism prism && Upright.is(prism) ? addOperand(prism, placement) : -1;
  }

  private int node(ExpressionTree.Kind kind, List<Solid> solids, Placement placement) {
    List<Integer> nodes = new ArrayList<>();
    return addAll(solids, placement, nodes) ? tree.node(kind, nodes) : -1;
  }

  private int addCut(Cut cut, Placement placement) {
    List<Integer> nodes = new ArrayList<>();
    if (!addAll(List.of(cut.solid()), placement, nodes)) {
      return -1;
    }
    taken = !taken;
    boolean all = addAll(cut.cutters(), placement, nodes);
    taken = !taken;
    return all ? tree.node(ExpressionTree.Kind.CUT, nodes) : -1;
  }

  private boolean addAll(List<? extends Solid> solids, Placement placement, List<Integer> nodes) {
    for (Solid solid : solids) {
      int node = add(solid, placement);
      if (node < 0) {
        return false;
      }
      nodes.add(node);
    }
    return true;
  }

  private int addOperand(Prism prism, Placement placement) {
    Upright given = Upright.of(prism);
    Upright placed = new Upright(LeafBuilder.placed(given.xyz, placement.onGrid()), given.rings);
    if (!operands.isEmpty() && operands.get(0).axis() != placed.axis()) {
      return -1;
    }
    operands.add(placed);
    cutAway.add(taken);
    return tree.operand();
  }
}
