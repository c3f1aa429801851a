package outrigger.generator.clash;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Solid;

/** What two solids have in common, evaluated exactly. */
final class CommonPart {
  /**
   * Thickness below which a common part is what rounding leaves of a seat, mm: each side of it may be off by a few grid
   * steps of 61 nm.
   */
  static final double SEAT = 0.001;
  /**
   * Where a common part touches itself along a line it is no mesh; one of the two is then moved by this, mm, well below
   * {@link #SEAT}.
   */
  private static final double NUDGE = 3 * Grid.STEP;

  private final Mesh mesh;

  private CommonPart(Mesh mesh) {
    this.mesh = mesh;
  }

  /** What two solids have in common; empty if that is nothing. */
  static Optional<CommonPart> of(Solid a, Solid b) {
    Bounds both = Bounds.of(a).common(Bounds.of(b));
    if (both.thickness() < 0) {
      return Optional.empty();
    }
    Optional<Solid> first = Pruned.to(a, both);
    Optional<Solid> second = Pruned.to(b, both);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    return mesh(first.get(), second.get()).map(CommonPart::new);
  }

  private static Optional<Mesh> mesh(Solid a, Solid b) {
    try {
      return Mesher.meshIfAny(new Common(List.of(a, b)));
    } catch (ShapeException touchesItself) {
      return Mesher.meshIfAny(new Common(List.of(a, b.move(NUDGE, NUDGE, NUDGE))));
    }
  }

  /** Its volume, mm^3, 0 if no piece of it is thicker than {@link #SEAT}. */
  double volume() {
    return measured().stream().mapToDouble(Measures::volume).sum();
  }

  /** Its pieces thicker than {@link #SEAT}, the largest first. */
  List<Overlap> overlaps() {
    return measured().stream().filter(m -> m.volume() > 0)
        .map(m -> new Overlap(m.volume(), new Spot(m.centroidX(), m.centroidY(), m.centroidZ()),
            new Spot(m.maxX() - m.minX(), m.maxY() - m.minY(), m.maxZ() - m.minZ())))
        .sorted(Comparator.comparingDouble(Overlap::volume).reversed()).toList();
  }

  /** What its shells measure, seats left out; a void has a volume below 0. */
  private List<Measures> measured() {
    return shells().stream().map(shell -> Proof.judge(shell).measures())
        .filter(m -> 2 * Math.abs(m.volume()) > SEAT * m.area()).toList();
  }

  /** How far along a direction its nearest point lies from a point, mm. */
  double nearest(Spot from, Spot direction) {
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Spot vertex = new Spot(Grid.toMm(mesh.x(v)), Grid.toMm(mesh.y(v)), Grid.toMm(mesh.z(v)));
      least = Math.min(least, vertex.dot(direction) - from.dot(direction));
    }
    return least;
  }

  private List<Mesh> shells() {
    int[] corners = new int[3 * mesh.facetCount()];
    int[] xyz = new int[3 * mesh.vertexCount()];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      xyz[3 * v] = mesh.x(v);
      xyz[3 * v + 1] = mesh.y(v);
      xyz[3 * v + 2] = mesh.z(v);
    }
    int[] shell = Facets.shells(corners, mesh.vertexCount());
    Map<Integer, List<Integer>> byShell = new TreeMap<>();
    for (int i = 0; i < corners.length; i++) {
      byShell.computeIfAbsent(shell[corners[i]], s -> new ArrayList<>()).add(corners[i]);
    }
    return byShell.values().stream()
        .map(list -> Mesh.of(xyz, list.stream().mapToInt(Integer::intValue).toArray())).toList();
  }
}
