package outrigger.shapes.print.layer;

import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/** Asks how far free edges, and corners beside them, stand out from the layer below. */
final class FreeEdges {
  /** Distance between the points asked on a free edge, mm, but no more than so many: own choice. */
  private static final double APART = 0.5;
  private static final int MOST_POINTS = 64;

  private final Mesh mesh;
  private final Undersides undersides;

  FreeEdges(Mesh mesh, Undersides undersides) {
    this.mesh = mesh;
    this.undersides = undersides;
  }

  /** Something to be done for a place, mm. */
  interface Place {
    void take(double x, double y);
  }

  /** Gives points of a rim's free edges, from the beginning of each on, no fewer of each than some. */
  static void forEachPoint(Rim rim, int fewest, Place place) {
    for (int e = 0; e < rim.size(); e++) {
      int steps = rim.isCarried(e) ? 0 : (int) Math.min(MOST_POINTS, Math.max(fewest, Math.ceil(rim.length(e) / APART)));
      for (int i = 0; i < steps; i++) {
        double t = (double) i / steps;
        place.take(rim.x0(e) + t * (rim.x1(e) - rim.x0(e)), rim.y0(e) + t * (rim.y1(e) - rim.y0(e)));
      }
    }
  }

  /** The points of a piece's free edges above steep facets, as far as they stand out from the layer below, mm. */
  static OutPoints asked(SteepUnder under, Rim rim, OutlineGrid below, double reach) {
    OutPoints out = new OutPoints(reach, under);
    forEachPoint(rim, 1, (x, y) -> out.ask(x, y, below));
    return out;
  }

  /**
   * Corners of level undersides beside the rim of the layer's middle: where something narrows from its ledge upward.
   *
   * @param beside how far from the rim, mm
   */
  void askCorners(List<Patch> patches, Rim rim, double beside, OutPoints out, OutlineGrid below) {
    for (Patch patch : patches) {
      if (!undersides.isLevel(patch.facet())) {
        continue;
      }
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(patch.facet(), k);
        double x = Grid.toMm(mesh.x(v));
        double y = Grid.toMm(mesh.y(v));
        if (below.distance(x, y) > out.most() && rim.isFreeWithin(beside, x, y)) {
          out.ask(x, y, below);
        }
      }
    }
  }

  /** Lines are samples: where what they leave ends in a corner, that stands out farthest. */
  static void askCorners(Rim rim, Chords chords, OutPoints out, OutlineGrid below) {
    for (int e = 0; e < rim.size(); e++) {
      if (chords.endAt(rim, e)) {
        out.ask(rim.x0(e), rim.y0(e), below);
        out.ask(rim.x1(e), rim.y1(e), below);
      }
    }
  }
}
