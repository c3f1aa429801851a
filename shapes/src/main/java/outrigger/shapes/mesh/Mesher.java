package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.frame.TouchException;
import outrigger.shapes.mesh.frame.Turns;
import outrigger.shapes.mesh.settle.UnsettledException;
import outrigger.shapes.mesh.inside.Membership;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.SamePlace;
import outrigger.shapes.mesh.leaf.TouchingOutlines;
import outrigger.shapes.mesh.planar.PlanarWay;
import outrigger.shapes.mesh.settle.Settler;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;
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
 * Evaluates a solid to a mesh on the grid.
 *
 * <p>Moves, mirrors and quarter turns are applied to the leaves, the sum of all moves of a leaf rounded to the grid
 * once. A solid turned by any other angle is meshed first, its turned corners and its move rounded once each; from then
 * on it is exact again, though what was a flat face may be bent by half a grid unit.
 */
public final class Mesher {
  /** Corners of operands from which on more than one thread is worth its while; measured. */
  private static final int MANY = 3_000;

  private final Workers workers;
  private final Solid solid;
  /** Whether it is evaluated in axes of its own. */
  private final boolean isTurned;
  /** All that the expression is over, one that stands at several places as often. */
  private final List<Polyhedron> operands = new ArrayList<>();
  /** Of these, each once: a copy of one in its very place is never met with it. */
  private final List<Polyhedron> distinct = new ArrayList<>();
  private final Map<SamePlace, Integer> numbers = new HashMap<>();
  /** Solids that are turned by any angle, as they are before that; empty where nothing is left of one. */
  private final Map<Solid, Optional<Mesh>> straights = new IdentityHashMap<>();
  /** How operands are placed that are turned by any angle. */
  private final List<Placement> turns = new ArrayList<>();
  private final List<Boolean> cutAway = new ArrayList<>();
  private final Membership.Tree tree = new Membership.Tree();
  /** What the parts do as turned operands see them, where the grid did not let them come to rest. */
  private Optional<TouchException> touch = Optional.empty();
  /** Whether what is being added is taken away from the whole. */
  private boolean taken;
  /** Whether the caller has said that the mesh is sound. */
  private boolean known;

  private Mesher(Solid solid, Workers workers) {
    this(solid, Placement.IDENTITY, workers);
  }

  private Mesher(Solid solid, Placement placement, Workers workers) {
    this.workers = workers;
    this.solid = solid;
    isTurned = !placement.isIdentity();
    add(solid, placement);
  }

  /**
   * Evaluates a solid whole. The mesh is closed, with facets counter-clockwise seen from outside; no two facets cross.
   *
   * @throws outrigger.shapes.num.ShapeException if nothing is left, if the result touches itself along a line, if it
   *     reaches beyond the grid, if it cannot be rounded to the grid, or if it is nested by the thousand
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public static Mesh mesh(Solid solid) {
    return mesh(solid, mesh -> false);
  }

  /**
   * The same, for a caller who proves the mesh. Rounding seldom makes facets meet, and a proof finds that out on the way: so
   * that it need not be looked for, meshes are first shown to the caller.
   *
   * @param isSound asked, once or more, whether a mesh is known to be sound; the one it says so of is the result. False may
   *     mean that it is not known
   */
  public static Mesh mesh(Solid solid, Predicate<Mesh> isSound) {
    return mesh(solid, isSound, Workers.of(1));
  }

  /**
   * The same on several threads: the same mesh, sooner where it is large. Small parts, and what goes the planar way, are
   * made by the caller alone.
   *
   * @param isSound asked by the calling thread only
   */
  public static Mesh mesh(Solid solid, Predicate<Mesh> isSound, Workers workers) {
    try {
      return PlanarWay.mesh(solid).orElseGet(() -> spatial(solid, isSound, workers));
    } catch (StackOverflowError deep) {
      throw new ShapeException("parts are joined and cut in turns, one within the other, more deeply than the thread can follow",
          "Join or cut many at once, or call from a thread with a larger stack.");
    }
  }

  /** Evaluates a solid by the spatial way, whatever it is. */
  static Mesh spatial(Solid solid) {
    return spatial(solid, mesh -> false, Workers.of(1));
  }

  /** The same on several threads. */
  static Mesh spatial(Solid solid, Predicate<Mesh> isSound, Workers workers) {
    Mesher mesher = new Mesher(solid, workers);
    Predicate<Mesh> noted = mesh -> mesher.known = isSound.test(mesh);
    if (mesher.operands.isEmpty()) {
      throw new ShapeException("nothing is left of any part of the solid", "Check the sizes and places of its parts.");
    }
    return mesher.framed(Kernel::evaluate, noted).orElseThrow(() -> new ShapeException(
        "what is left of the solid is thinner than the grid of 61 nm", "Check the sizes and places of what is cut."));
  }

  /**
   * Evaluates a solid of which nothing may be left, such as what two parts have in common.
   *
   * @return its mesh as {@link #mesh} makes it; empty where there is no volume, or none thicker than the grid
   * @throws outrigger.shapes.num.ShapeException as {@link #mesh} does, but not for a solid without volume
   */
  public static Optional<Mesh> meshIfAny(Solid solid) {
    return meshIfAny(solid, Workers.of(1));
  }

  private static Optional<Mesh> meshIfAny(Solid solid, Workers workers) {
    Optional<Mesh> planar = PlanarWay.mesh(solid);
    return planar.isPresent() ? planar : new Mesher(solid, workers).framed(Kernel::evaluateAny, mesh -> false);
  }

  /** Evaluates all operands together, brought to a frame. */
  private interface Evaluation {
    Rounded of(Faces faces, Membership.Tree tree);
  }

  /** In the operands' own frame, if there are any; what does not come to rest there, first as a turned operand sees it. */
  private Optional<Mesh> framed(Evaluation evaluation, Predicate<Mesh> isSound) {
    if (operands.isEmpty()) {
      return Optional.empty();
    }
    Workers some = workers.from(MANY, operands.stream().mapToLong(p -> p.xyz().length / 3).sum());
    Settler settler;
    try {
      Frame own = Frame.of(operands, cutAway);
      settler = new Settler(evaluation.of(faces(own, some), tree), own, some, isSound);
    } catch (ShapeException refusal) {
      Optional<Optional<Mesh>> straight = refusal instanceof TouchException && areAllTurned() ? inAxesOfOperands(isSound)
          : Optional.empty();
      if (straight.isEmpty()) {
        // what is refused there is refused wherever the operands lie: as they are given, its place is told right
        evaluation.of(faces(Frame.GIVEN, some), tree);
      }
      return straight.orElseThrow(() -> refusal);
    }
    try {
      return (isBent(settler) ? inAxesOfOperands(isSound) : Optional.<Optional<Mesh>>empty()).orElseGet(settler::mesh);
    } catch (UnsettledException unsettled) {
      throw touch.isPresent() ? touch.get() : unsettled;
    }
  }

  /** Whether what rounding made of the facets does not come to rest, or may touch itself for it. */
  private boolean isBent(Settler settler) {
    return !settler.isAtRest() || !known && areAllTurned() && settler.mesh().filter(Settler::touchesItself).isPresent();
  }

  /**
   * Evaluated as seen by one of the operands that are turned by any angle, and turned as a whole: flat faces that several
   * have in common are flat there, where the grid bends them otherwise. Nothing where that does not settle either, or parts
   * touch.
   */
  private Optional<Optional<Mesh>> inAxesOfOperands(Predicate<Mesh> isSound) {
    for (Placement turn : isTurned ? List.<Placement>of() : Turns.of(turns)) {
      try {
        Optional<Mesh> straight = new Mesher(solid, turn.inverse(), workers).framed(Kernel::evaluateAny, mesh -> false);
        if (straight.isPresent() && Settler.touchesItself(straight.get())) {
          continue;
        } else if (straight.isPresent()) {
          return Optional.of(Turning.of(straight.get(), turn, workers.from(MANY, straight.get().vertexCount()), isSound));
        } else if (areTurnedAlike()) {
          return Optional.of(Optional.empty());
        }
      } catch (TouchException touching) {
        touch = Optional.of(touching.placed(turn));
      } catch (ShapeException refusal) {
        // nor does it settle so
      }
    }
    return Optional.empty();
  }

  /** Whether the grid bends every operand, so that how they touch here is not how they were drawn. */
  private boolean areAllTurned() {
    return !isTurned && !turns.isEmpty() && turns.size() == operands.size();
  }

  /** Whether all are turned by the same, but for quarter turns before that: in its axes each stands as it was drawn. */
  private boolean areTurnedAlike() {
    if (!areAllTurned()) {
      return false;
    }
    Placement back = turns.get(0).inverse();
    return turns.stream().allMatch(p -> p.then(back).turnsQuarterly());
  }

  private Faces faces(Frame frame, Workers some) {
    Faces faces = new Faces(some);
    faces.addAll(some.each(distinct.size(), i -> frame.in(distinct.get(i))));
    return faces;
  }

  /** Adds an expression's operands and nodes; returns its node. */
  private int add(Solid solid, Placement placement) {
    if (solid instanceof Placed placed) {
      return addPlaced(placed, placement);
    } else if (solid instanceof Union union) {
      return tree.node(Membership.Kind.UNION, addAll(union.solids(), placement));
    } else if (solid instanceof Common common) {
      return tree.node(Membership.Kind.COMMON, addAll(common.solids(), placement));
    } else if (solid instanceof Cut cut) {
      List<Integer> nodes = new ArrayList<>(List.of(add(cut.solid(), placement)));
      taken = !taken;
      nodes.addAll(addAll(cut.cutters(), placement));
      taken = !taken;
      return tree.node(Membership.Kind.CUT, nodes);
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
    Placement all = placed.placement().then(outer);
    return all.turnsQuarterly() || isTurned && placed.placement().turnsQuarterly() ? add(placed.solid(), all)
        : addTurned(placed.solid(), all);
  }

  private int addLeaf(Solid leaf, Supplier<Polyhedron> built, Placement placement) {
    return placement.turnsQuarterly() ? addOperand(built.get(), placement) : addTurned(leaf, placement);
  }

  private int addTurned(Solid inner, Placement placement) {
    Optional<Mesh> turned = straights.computeIfAbsent(inner, s -> meshIfAny(s, workers)).flatMap(
        straight -> Turning.of(straight, placement, workers.from(MANY, straight.vertexCount()), mesh -> false));
    if (turned.isEmpty()) {
      return tree.node(Membership.Kind.UNION, List.of());
    }
    turns.add(placement);
    return addOperand(Turning.polyhedron(turned.get().xyz(), turned.get().corners()), Placement.IDENTITY);
  }

  private int addOperand(Polyhedron polyhedron, Placement placement) {
    Polyhedron placed = LeafBuilder.place(polyhedron, placement.onGrid());
    operands.add(placed);
    cutAway.add(taken);
    Integer same = numbers.putIfAbsent(new SamePlace(placed), distinct.size());
    if (same != null) {
      return tree.again(same);
    }
    distinct.add(placed);
    return tree.operand();
  }
}
