package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Section;

/** What of the surface is the cause that a piece of a layer stands out: undersides over it, and corners that start there. */
final class Causes {
  /**
   * Patches smaller than this part of a piece belong to the piece that holds their middle; of larger ones what lies within
   * it counts. Own choice.
   */
  private static final double LARGE = 0.05;

  private final Mesh mesh;
  private final Layering layering;
  private final Undersides undersides;

  Causes(Mesh mesh, Layering layering, Undersides undersides) {
    this.mesh = mesh;
    this.layering = layering;
    this.undersides = undersides;
  }

  /** The undersides of a piece within a layer, from the middle of the one below to its own. */
  List<Patch> patches(int layer, Section piece, SteepUnder under) {
    List<Patch> patches = new ArrayList<>();
    double low = layering.middle(layer - 1);
    double high = layering.middle(layer);
    List<double[]> loops = piece.loops();
    LoopArea area = new LoopArea(loops);
    double large = LARGE * piece.area();
    under.forEach(slot -> {
      Patch patch = Patch.between(mesh, undersides.facet(slot), low, high);
      if (patch.area() > large) {
        Patch.within(loops, mesh, undersides.facet(slot), low, high).ifPresent(patches::add);
      } else if (patch.area() > 0 && area.holds(patch.x(), patch.y())) {
        patches.add(patch);
      }
    });
    return patches;
  }

  /** Whether the surface has a lowest corner within this layer under the piece. */
  boolean holdPit(int layer, Section piece) {
    double near = 2 * layering.layer();
    boolean[] found = new boolean[1];
    undersides.forEachPit(piece.minX() - near, piece.minY() - near, layering.middle(layer - 1), piece.maxX() + near,
        piece.maxY() + near, layering.middle(layer), v -> {
          double x = Grid.toMm(mesh.x(v));
          double y = Grid.toMm(mesh.y(v));
          found[0] |= piece.holds(x, y) || piece.fromOutline(x, y) <= near;
        });
    return found[0];
  }

  /** Whether more than half of some undersides is flat. */
  boolean areFlat(List<Patch> patches) {
    double all = 0;
    double flat = 0;
    for (Patch patch : patches) {
      all += patch.area();
      flat += undersides.isFlat(patch.facet()) ? patch.area() : 0;
    }
    return flat > all / 2;
  }
}
