package outrigger.shapes.print.spot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.CubeMap;
import outrigger.shapes.print.facet.Edges;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.facet.Seams;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearRegions;

/**
 * Narrow spots at inner edges, as at the bottom of a notch or where two bodies meet in a neck. For the air, which lies on
 * the other side, these are the part's outer edges, as of two bodies that stand corner to corner.
 *
 * <p>A ball that touches a face near such an edge leans away from what the edge faces, so what is left between the bottoms
 * of two notches shows at no sample of a face. A ball that touches the edge may lie any way between the normals of its two
 * faces; the way is sought that leaves the least, from the middle one towards what stops the ball there. Edges blunter
 * than {@value #BLUNT} (cosine) need no samples of their own: balls on their faces are held.
 */
public final class InnerEdges {
  /** cos 25 degrees: with less between their normals, balls that touch the faces stand straight enough to be held. */
  private static final double BLUNT = 0.906;
  /** Ways tried after the middle one, at most. */
  private static final int TRIES = 4;
  /** A turn that small finds nothing new, radians. */
  private static final double TURN = 0.01;
  /** Ways are kept this part inside the outermost, for along a face's normal that face itself is flush with the ball. */
  private static final double WITHIN = 0.999;
  /** Samples keep this far from the ends of their edge, mm: at the end itself there is no saying which edge is touched. */
  private static final double INSET = 1e-3;
  /** So many needles beside each other are looked over for the facet behind them. */
  private static final int NEEDLES = 4;
  /** What is narrower lies in a crease that rounding left along the edge itself, mm. */
  private static final double LEAST = Grid.STEP;
  /** Facets that a thread takes at a time. */
  private static final int PIECE = 16384;
  /** Room for 20 bits of cell number along each axis, and for a side. */
  private static final int BITS = 20;
  private static final CubeMap SIDES = new CubeMap(1);

  private final Mesh mesh;
  private final Facets facets;
  private final Seams seams;
  private final FacetTree tree;
  private final Reach reach;
  private final NearRegions regions;
  private final Edges edges;
  private final boolean[] needles;

  private InnerEdges(Specimen specimen, Reach reach, NearRegions regions) {
    this.regions = regions;
    mesh = specimen.mesh();
    facets = specimen.facets();
    seams = specimen.seams();
    tree = specimen.facetTree();
    this.reach = reach;
    edges = new Edges(mesh, facets, reach.inward());
    needles = new boolean[tree.size()];
    for (int slot = 0; slot < needles.length; slot++) {
      needles[tree.facet(slot)] = tree.isNeedle(slot);
    }
  }

  /**
   * All spots on inner edges that are narrower than the bound, in an order that hangs on the mesh alone.
   *
   * @param regions where facets stand against each other
   */
  public static List<Spot> narrow(Specimen specimen, Reach reach, NearRegions regions) {
    if (regions.isEmpty()) {
      return List.of();
    }
    InnerEdges edges = new InnerEdges(specimen, reach, regions);
    int pieces = (edges.tree.size() + PIECE - 1) / PIECE;
    List<Spot> all = new ArrayList<>();
    specimen.workers().each(pieces, i -> edges.new Piece().of(i * PIECE, Math.min(edges.tree.size(), (i + 1) * PIECE)))
        .forEach(all::addAll);
    return all;
  }

  /** Length of an edge, squared, mm^2. */
  private double square(int half) {
    Vec edge = Vec.of(mesh, Seams.to(mesh, half)).minus(Vec.of(mesh, Seams.from(mesh, half)));
    return edge.dot(edge);
  }

  /** The half-edge across, or where that is one of a needle, the one across the needle's other long edge; -1 for none. */
  private int across(int half) {
    int across = seams.across(half);
    for (int i = 0; i < NEEDLES && needles[across / 3]; i++) {
      int first = across / 3 * 3 + (across + 1) % 3;
      int second = across / 3 * 3 + (across + 2) % 3;
      across = seams.across(square(first) > square(second) ? first : second);
    }
    return across / 3 == half / 3 || needles[across / 3] ? -1 : across;
  }

  /** Whether of the two facets at an edge the first tells of it: the larger one. */
  private boolean tells(int half, int across) {
    double own = facets.area(half / 3);
    double other = facets.area(across / 3);
    return own > other || own == other && half < across;
  }

  private Vec normal(int facet) {
    return new Vec(facets.normal(facet, 0), facets.normal(facet, 1), facets.normal(facet, 2)).unit();
  }

  /** What one thread measures at a time. */
  private final class Piece {
    private final BallProbe probe = reach.probe(tree);
    private final Set<Long> taken = new HashSet<>();
    private final List<Spot> spots = new ArrayList<>();

    List<Spot> of(int from, int to) {
      for (int slot = from; slot < to; slot++) {
        if (regions.meets(slot) && !needles[tree.facet(slot)]) {
          round(slot, tree.facet(slot));
        }
      }
      return spots;
    }

    private void round(int slot, int facet) {
      for (int half = 3 * facet; half < 3 * facet + 3; half++) {
        int across = across(half);
        if (across >= 0 && tells(half, across) && edges.isJutting(half, across, BLUNT)) {
          along(slot, half, normal(across / 3));
        }
      }
    }

    private void along(int slot, int half, Vec otherNormal) {
      Vec a = Vec.of(mesh, Seams.from(mesh, half));
      Vec ab = Vec.of(mesh, Seams.to(mesh, half)).minus(a);
      double length = ab.length();
      Fan fan = new Fan(ab.times(1 / length), reach.direction(tree.normal(slot)), reach.direction(otherNormal));
      if (length < reach.spacing() / 2) {
        if (taken.add(cell(a.plus(ab, 0.5), fan.side()))) {
          measure(slot, a.plus(ab, 0.5), fan, reach.spacing() / 2);
        }
        return;
      }
      int parts = Math.max(2, (int) Math.ceil(length / reach.spacing()));
      for (int i = 0; i <= parts; i++) {
        double at = Math.min(Math.max(length * i / parts, INSET), length - INSET);
        measure(slot, a.plus(ab, at / length), fan, length / (i == 0 || i == parts ? 2 * parts : parts));
      }
    }

    /** Of edges much shorter than the spacing, as on round forms, one is measured of those that lie near and face alike. */
    private long cell(Vec p, int side) {
      double size = reach.spacing() / 2;
      long middle = 1L << BITS - 1;
      return ((((long) Math.floor(p.x() / size) + middle) << BITS | ((long) Math.floor(p.y() / size) + middle)) << BITS
          | ((long) Math.floor(p.z() / size) + middle)) * SIDES.cells() + side;
    }

    private void measure(int slot, Vec p, Fan fan, double length) {
      if (!regions.holds(p)) {
        return;
      }
      BallProbe.Ball ball = ball(slot, p, fan);
      if (ball.held() && ball.width() > LEAST && ball.width() < reach.bound()) {
        spots.add(new Spot(slot, p, tree.normal(slot), ball.onEdge(), length * Spot.EDGE));
      }
    }

    /** The narrowest held on the way. */
    private BallProbe.Ball ball(int slot, Vec p, Fan fan) {
      probe.reset();
      double angle = 0;
      BallProbe.Ball last = probe.measureBelow(reach.bound(), slot, p, fan.way(angle));
      BallProbe.Ball least = last;
      for (int i = 0; i < TRIES && last.stopper() >= 0; i++) {
        double next = fan.towards(last.stop().minus(p));
        if (Math.abs(next - angle) < TURN) {
          break;
        }
        angle = next;
        last = probe.measureBelow(least.held() ? least.width() : reach.bound(), slot, p, fan.way(angle));
        least = last.held() && (!least.held() || last.width() < least.width()) ? last : least;
      }
      return least;
    }
  }

  /** The ways between the normals of an edge's two faces, by the angle from the middle one, radians. */
  private static final class Fan {
    private final Vec middle;
    private final Vec side;
    private final Vec first;

    private Fan(Vec along, Vec first, Vec second) {
      middle = first.plus(second, 1).unit();
      side = along.cross(middle);
      this.first = first;
    }

    Vec way(double angle) {
      return middle.times(StrictMath.cos(angle)).plus(side, StrictMath.sin(angle));
    }

    /** Which of six sides the middle way points to. */
    int side() {
      return SIDES.cell(middle.x(), middle.y(), middle.z());
    }

    /** The angle of the way nearest to a direction. */
    double towards(Vec v) {
      double half = WITHIN * StrictMath.acos(Math.min(1, middle.dot(first)));
      double angle = StrictMath.atan2(v.dot(side), v.dot(middle));
      return Math.max(-half, Math.min(half, angle));
    }
  }
}
