package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Region;
import outrigger.shapes.profile.Ring;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;

/**
 * An operand with straight walls along an axis: the rings of its outline, and the two heights between which it stands.
 *
 * <p>Its corners come in pairs, one at each end of an edge along the axis.
 */
public final class Upright {
  /** x, y, z of both ends of each edge along the axis, in grid units; not to be changed. */
  public final int[] xyz;
  /** For each region the rings, first the outer one: of each the number of its first pair of corners. */
  public final int[][] rings;

  /**
   * An operand by its corners.
   *
   * @param xyz x, y, z of each corner, the two ends of an edge along the axis one after the other
   * @param rings for each region its rings, the outer one first: the number of the ring's first edge; they follow each other
   */
  public Upright(int[] xyz, int[][] rings) {
    this.xyz = xyz;
    this.rings = rings;
  }

  /** Whether a prism has straight walls and sharp rims. */
  public static boolean is(Prism prism) {
    return prism.draftDegrees() == 0 && prism.bottomEdge() instanceof EdgeForm.Sharp
        && prism.topEdge() instanceof EdgeForm.Sharp;
  }

  /** The operand that a prism with straight walls and sharp rims is. */
  public static Upright of(Prism prism) {
    List<Region> regions = prism.profile().regions();
    int edges = 0;
    for (Region region : regions) {
      edges += region.shell().size();
      for (Ring hole : region.holes()) {
        edges += hole.size();
      }
    }
    int[] xyz = new int[6 * edges];
    int[][] rings = new int[regions.size()][];
    int bottom = Grid.fromMm(prism.bottom());
    int top = Grid.fromMm(prism.top());
    int at = 0;
    for (int r = 0; r < rings.length; r++) {
      List<Ring> all = new ArrayList<>(regions.get(r).holes());
      all.add(0, regions.get(r).shell());
      rings[r] = new int[all.size()];
      for (int i = 0; i < rings[r].length; i++) {
        rings[r][i] = at;
        at = put(all.get(i), bottom, top, xyz, at);
      }
    }
    return new Upright(xyz, rings);
  }

  private static int put(Ring ring, int bottom, int top, int[] xyz, int from) {
    int o = 6 * from;
    for (int i = 0; i < ring.size(); i++, o += 6) {
      xyz[o] = ring.x(i);
      xyz[o + 1] = ring.y(i);
      xyz[o + 2] = bottom;
      xyz[o + 3] = ring.x(i);
      xyz[o + 4] = ring.y(i);
      xyz[o + 5] = top;
    }
    return from + ring.size();
  }

  /** Number of edges along the axis. */
  int edges() {
    return xyz.length / 6;
  }

  /** The axis it stands along, 0 to 2. */
  public int axis() {
    return xyz[0] != xyz[3] ? 0 : xyz[1] != xyz[4] ? 1 : 2;
  }

  /** Height of its lower end along the axis, grid units. */
  public int low() {
    return Math.min(xyz[axis()], xyz[3 + axis()]);
  }

  /** Height of its upper end along the axis, grid units. */
  public int high() {
    return Math.max(xyz[axis()], xyz[3 + axis()]);
  }

  /** The number of the first edge after a ring. */
  public int end(int region, int ring) {
    return ring + 1 < rings[region].length ? rings[region][ring + 1]
        : region + 1 < rings.length ? rings[region + 1][0] : edges();
  }
}
