package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Turns;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.SamePlace;
import outrigger.shapes.mesh.leaf.TouchingOutlines;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.Workers;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Cut;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Placed;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;

/**
 * The operands of an expression, each where it is placed, and the expression over them.
 *
 * <p>Moves, mirrors and quarter turns are applied to the leaves, the sum of all moves of a leaf rounded to the grid
 * once. A solid turned by any other angle is meshed first, its turned corners and its move rounded once each; from then
 * on it is exact again, though what was a flat face may be bent by half a grid unit.
 */
final class Operands {
  private final Workers workers;
  /** Whether they are seen in other axes than those they are given in. */
  private final boolean areSeenTurned;
  /** All that the expression is over, one that stands at several places as often. */
  private final List<Polyhedron> all = new ArrayList<>();
  /** Of these, each once: a copy of one in its very place is never met with it. */
  private final List<Polyhedron> distinct = new ArrayList<>();
  private final Map<SamePlace, Integer> numbers = new HashMap<>();
  /** Solids that are turned by any angle, as they are before that; empty where nothing is left of one. */
  private final Map<Solid, Optional<Mesh>> straights = new IdentityHashMap<>();
  /** How operands are placed that are turned by any angle. */
  private final List<Placement> turns = new ArrayList<>();
  private final List<Boolean> cutAway = new ArrayList<>();
  private final ExpressionTree tree = new ExpressionTree();
  /** Whether what is being added is taken away from the whole. */
  private boolean taken;

  /**
   * Those of a solid.
   *
   * @param seen how all of it is placed before
   * @throws outrigger.shapes.num.ShapeException if one lies beyond the grid, or one that is turned cannot be meshed
   */
  Operands(Solid solid, Placement seen, Workers workers) {
    this.workers = workers;
    areSeenTurned = !seen.isIdentity();
    add(solid, seen);
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  ExpressionTree tree() {
    return tree;
  }

  /**
   * How a few of those are placed that are turned by any angle: other axes to evaluate in. None where they are seen in such
   * already.
   */
  List<Placement> axes() {
    return areSeenTurned ? List.of() : Turns.of(turns);
  }

  /** The frame they set. */
  Frame frame() {
    return Frame.of(all, cutAway);
  }

  /** Their faces in a frame. */
  Faces faces(Frame frame, Workers some) {
    Faces faces = new Faces(some);
    faces.addAll(some.each(distinct.size(), i -> frame.in(distinct.get(i))));
    return faces;
  }

  /** How many corners they have together. */
  long cornerCount() {
    return all.stream().mapToLong(p -> p.xyz().length / 3).sum();
  }

  /** Whether the grid bends every one, so that how they touch here is not how they were drawn. */
  boolean areAllTurned() {
    return !areSeenTurned && !turns.isEmpty() && turns.size() == all.size();
  }

  /** Whether all are turned by the same, but for quarter turns before that: in its axes each stands as it was drawn. */
  boolean areTurnedAlike() {
    if (!areAllTurned()) {
      return false;
    }
    Placement back = turns.get(0).inverse();
    return turns.stream().allMatch(p -> p.then(back).turnsQuarterly());
  }

  /** Adds an expression's operands and nodes; returns its node. */
  private int add(Solid solid, Placement placement) {
    if (solid instanceof Placed placed) {
      return addPlaced(placed, placement);
    } else if (solid instanceof Union union) {
      return tree.node(ExpressionTree.Kind.UNION, addAll(union.solids(), placement));
    } else if (solid instanceof Common common) {
      return tree.node(ExpressionTree.Kind.COMMON, addAll(common.solids(), placement));
    } else if (solid instanceof Cut cut) {
      List<Integer> nodes = new ArrayList<>(List.of(add(cut.solid(), placement)));
      taken = !taken;
      nodes.addAll(addAll(cut.cutters(), placement));
      taken = !taken;
      return tree.node(ExpressionTree.Kind.CUT, nodes);
    } else if (solid instanceof Prism prism) {
      Optional<Solid> apart = TouchingOutlines.apart(prism);
      return apart.isPresent() ? add(apart.get(), placement) : addLeaf(prism, () -> LeafBuilder.prism(prism), placement);
    } else if (solid instanceof Revolution revolution) {
      Optional<Solid> apart = TouchingOutlines.apart(revolution);
      return apart.isPresent() ? add(apart.get(), placement)
          : addLeaf(revolution, () -> LeafBuilder.revolution(revolution), placement);
    } else if (solid instanceof Faceted faceted) {
      return addLeaf(faceted, () -> LeafBuilder.faceted(faceted), placement);
    }
    throw new AssertionError(solid);
  }

  private List<Integer> addAll(List<? extends Solid> solids, Placement placement) {
    List<Integer> nodes = new ArrayList<>();
    for (Solid solid : solids) {
      nodes.add(add(solid, placement));
    }
    return nodes;
  }

  private int addPlaced(Placed placed, Placement outer) {
    Placement whole = placed.placement().then(outer);
    return whole.turnsQuarterly() || areSeenTurned && placed.placement().turnsQuarterly() ? add(placed.solid(), whole)
        : addTurned(placed.solid(), whole);
  }

  private int addLeaf(Solid leaf, Supplier<Polyhedron> built, Placement placement) {
    return placement.turnsQuarterly() ? addOperand(built.get(), placement) : addTurned(leaf, placement);
  }

  private int addTurned(Solid inner, Placement placement) {
    Optional<Mesh> turned = straights.computeIfAbsent(inner, s -> Mesher.meshIfAny(s, workers)).flatMap(
        straight -> Turning.of(straight, placement, workers, mesh -> false));
    if (turned.isEmpty()) {
      return tree.node(ExpressionTree.Kind.UNION, List.of());
    }
    turns.add(placement);
    return addOperand(Turning.polyhedron(turned.get().xyz(), turned.get().corners()), Placement.IDENTITY);
  }

  private int addOperand(Polyhedron polyhedron, Placement placement) {
    Polyhedron placed = LeafBuilder.place(polyhedron, placement.onGrid());
    all.add(placed);
    cutAway.add(taken);
    Integer same = numbers.putIfAbsent(new SamePlace(placed), distinct.size());
    if (same != null) {
      return tree.again(same);
    }
    distinct.add(placed);
    return tree.operand();
  }
}
