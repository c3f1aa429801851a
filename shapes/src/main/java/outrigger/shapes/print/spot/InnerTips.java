package outrigger.shapes.print.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/**
 * Narrow spots at tips of hollows in a solid, as of two drilled holes that face each other: a ball on a cone's side leans
 * away from its tip, and round a cone no edge is sharp.
 *
 * <p>A tip is a corner whose edges all lead away from the solid before it, short ones as round a blunted tip left out. A
 * ball that touches it may lie any way between; the one towards what lies nearest there is taken.
 */
public final class InnerTips {
  /** Edges of a tip make less than 81 degrees with its axis, by the cosine; on blunter ones balls on the faces are held. */
  private static final double SHARP = 0.15;
  /** A tip weighs next to nothing beside the edges it ends, whose lengths are told. */
  private static final double POINT = 1e-6;
  /** Shorter edges are those of a blunted tip, mm. */
  private static final double BLUNTED = 0.05;

  private InnerTips() {}

  /** All spots at tips that are narrower than the bound, by the numbers of the corners. */
  public static List<Spot> narrow(Specimen specimen, Reach reach) {
    Mesh mesh = specimen.mesh();
    double[] axes = axes(mesh, specimen.facets());
    boolean[] blunt = blunt(mesh, axes);
    FacetTree tree = specimen.facetTree();
    int[] slots = slots(mesh, tree, blunt);
    BallProbe probe = reach.probe(tree);
    Before before = new Before(tree);
    List<Spot> spots = new ArrayList<>();
    for (int v = 0; v < blunt.length; v++) {
      if (slots[v] >= 0) {
        Vec tip = Vec.of(mesh, v);
        Vec axis = new Vec(axes[3 * v], axes[3 * v + 1], axes[3 * v + 2]).times(-1);
        Vec way = before.nearest(tip, axis, reach.bound()).minus(tip);
        probe.reset();
        BallProbe.Ball ball = probe.first(slots[v], tip, way.length() > 0 ? way.unit() : axis);
        if (ball.held() && ball.width() < reach.bound()) {
          spots.add(new Spot(slots[v], tip, tree.normal(slots[v]), ball.onEdge(), POINT * Spot.EDGE));
        }
      }
    }
    return spots;
  }

  /** Of each corner the mean normal of its facets, a unit vector. */
  private static double[] axes(Mesh mesh, Facets facets) {
    double[] axes = new double[3 * mesh.vertexCount()];
    for (int f = 0; f < mesh.facetCount(); f++) {
      for (int k = 0; k < 3; k++) {
        for (int axis = 0; axis < 3; axis++) {
          axes[3 * mesh.corner(f, k) + axis] += facets.normal(f, axis);
        }
      }
    }
    for (int v = 0; v < axes.length; v += 3) {
      double length = Math.sqrt(axes[v] * axes[v] + axes[v + 1] * axes[v + 1] + axes[v + 2] * axes[v + 2]);
      for (int axis = 0; axis < 3; axis++) {
        axes[v + axis] /= Math.max(length, Double.MIN_NORMAL);
      }
    }
    return axes;
  }

  /** Whether an edge of each corner does not lead along its axis: each edge is asked at either end by one of its facets. */
  private static boolean[] blunt(Mesh mesh, double... axes) {
    boolean[] blunt = new boolean[mesh.vertexCount()];
    double blunted = BLUNTED * Grid.PER_MM;
    for (int f = 0; f < mesh.facetCount(); f++) {
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(f, k);
        if (!blunt[a]) {
          int b = mesh.corner(f, (k + 1) % 3);
          double x = mesh.x(b) - mesh.x(a);
          double y = mesh.y(b) - mesh.y(a);
          double z = mesh.z(b) - mesh.z(a);
          double length = Math.sqrt(x * x + y * y + z * z);
          blunt[a] = length >= blunted && axes[3 * a] * x + axes[3 * a + 1] * y + axes[3 * a + 2] * z < SHARP * length;
        }
      }
    }
    return blunt;
  }

  /** A facet of each tip, by its slot; -1 for other corners. */
  private static int[] slots(Mesh mesh, FacetTree tree, boolean... blunt) {
    int[] slots = new int[blunt.length];
    Arrays.fill(slots, -1);
    for (int slot = 0; slot < tree.size(); slot++) {
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(tree.facet(slot), k);
        if (!blunt[v] && (slots[v] < 0 || tree.area(slot) > tree.area(slots[v]))) {
          slots[v] = slot;
        }
      }
    }
    return slots;
  }

  /** Seeks what lies nearest before a tip. */
  private static final class Before extends NearSearch {
    private Vec tip = new Vec(0, 0, 0);
    private Vec axis = tip;
    private Vec nearest = tip;

    private Before(FacetTree tree) {
      super(tree);
    }

    /** The nearest point of the surface within a distance and about a direction; the tip itself if there is none. */
    private Vec nearest(Vec from, Vec along, double distance) {
      tip = from;
      axis = along;
      nearest = from;
      walk(from, distance);
      return nearest;
    }

    @Override
    protected void meet(int slot) {
      double square = closest(slot, x, y, z);
      if (square > 0 && square < reach2) {
        Vec found = new Vec(qx, qy, qz);
        Vec way = found.minus(tip);
        if (way.dot(axis) > SHARP * way.length()) {
          nearest = found;
          reach2 = square;
        }
      }
    }
  }
}
