package outrigger.shapes.print.tree;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.facet.Arrangement;
import outrigger.shapes.print.facet.CubeMap;
import outrigger.shapes.print.facet.Extremes;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.facet.Vec;

/**
 * The facets of a mesh in mm, laid out for asking which of them lie near a place or face a way.
 *
 * <p>Facets stand in slots, by the six sides their normals point to and then along a space-filling curve; a perfect binary
 * tree of bounds lies over them, a few slots a leaf ({@link LeafRuns}), with the bounds of the normals. So what all looks
 * alike is dropped high up ({@link Facing}); what lies near a place is found by {@link PlaceTree}. Coordinates of the grid
 * are whole as 32-bit floats, so nothing is rounded here but the normals. Built in n log n for n facets, some 180 bytes a
 * facet; may be read by several threads.
 */
public final class FacetTree {
  /** Numbers a node. */
  public static final int WIDTH = TreeBounds.WIDTH;

  /**
   * Of a facet less high than this rounding to the grid decides which way it faces, mm: sixteen grid steps turn it by some
   * six degrees.
   */
  public static final double NEEDLE = 1e-3;
  private static final CubeMap SIDES = new CubeMap(1);
  /** A side's number stands above the place on the curve, whose lowest bits make room for it. */
  private static final int SIDE_BITS = 3;
  private static final int SIDE_SHIFT = 60;

  private final int leaves;
  private final int[] starts;
  private final int[] order;
  private final float[] corners;
  private final float[] normals;
  private final float[] nodes;
  private final float[] normalNodes;
  private final Slabs slabs;
  private final PlaceTree places;

  private FacetTree(Mesh mesh, Facets facets, long[] along) {
    order = new int[along.length];
    long[] bySide = new long[along.length];
    byte[] sides = sides(facets);
    int[] next = firstOfSides(sides);
    for (int facet = 0; facet < along.length; facet++) {
      int slot = next[sides[facet]]++;
      order[slot] = facet;
      bySide[slot] = (long) sides[facet] << SIDE_SHIFT | along[facet] >>> SIDE_BITS;
    }
    corners = new float[9 * order.length];
    for (int slot = 0; slot < order.length; slot++) {
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(order[slot], k);
        corners[9 * slot + 3 * k] = (float) Grid.toMm(mesh.x(v));
        corners[9 * slot + 3 * k + 1] = (float) Grid.toMm(mesh.y(v));
        corners[9 * slot + 3 * k + 2] = (float) Grid.toMm(mesh.z(v));
      }
    }
    normals = roundedNormals(facets);
    starts = LeafRuns.starts(corners, bySide);
    leaves = starts.length - 1;
    nodes = TreeBounds.of(corners, 3, starts);
    normalNodes = TreeBounds.of(normals, 1, starts);
    slabs = new Slabs(corners, nodes, normalNodes, starts);
    places = PlaceTree.of(nodes, starts);
  }

  /** The side that each facet's normal points to. */
  private static byte[] sides(Facets facets) {
    byte[] sides = new byte[facets.count()];
    for (int f = 0; f < sides.length; f++) {
      sides[f] = (byte) SIDES.cell(facets.normal(f, 0), facets.normal(f, 1), facets.normal(f, 2));
    }
    return sides;
  }

  /** The first slot of each side. */
  private static int[] firstOfSides(byte... sides) {
    int[] first = new int[SIDES.cells() + 1];
    for (byte side : sides) {
      first[side + 1]++;
    }
    for (int side = 0; side < SIDES.cells(); side++) {
      first[side + 1] += first[side];
    }
    return first;
  }

  private float[] roundedNormals(Facets facets) {
    float[] n = new float[3 * order.length];
    for (int slot = 0; slot < order.length; slot++) {
      for (int k = 0; k < 3; k++) {
        n[3 * slot + k] = (float) facets.normal(order[slot], k);
      }
    }
    return n;
  }

  /** The facets of a mesh, put in order. */
  public static FacetTree of(Mesh mesh) {
    Arrangement arrangement = Arrangement.of(mesh, Workers.of(1));
    return of(arrangement, new Facets(arrangement.mesh()));
  }

  /** The facets of a mesh in order, their normals known. */
  public static FacetTree of(Arrangement arrangement, Facets facets) {
    return new FacetTree(arrangement.mesh(), facets, arrangement.places());
  }

  /** Number of facets, and of slots. */
  public int size() {
    return order.length;
  }

  /** The facet in a slot. */
  public int facet(int slot) {
    return order[slot];
  }

  /** A facet's corner, 0 to 2, mm. */
  public Vec corner(int slot, int corner) {
    int o = 9 * slot + 3 * corner;
    return new Vec(corners[o], corners[o + 1], corners[o + 2]);
  }

  /** Unit outward normal of a facet. */
  public Vec normal(int slot) {
    Vec across = across(slot);
    return across.times(1 / across.length());
  }

  /** Area of a facet, mm^2. */
  public double area(int slot) {
    return across(slot).length() / 2;
  }

  /** Cross product of two edges of a facet. */
  private Vec across(int slot) {
    int o = 9 * slot;
    double ux = (double) corners[o + 3] - corners[o];
    double uy = (double) corners[o + 4] - corners[o + 1];
    double uz = (double) corners[o + 5] - corners[o + 2];
    double vx = (double) corners[o + 6] - corners[o];
    double vy = (double) corners[o + 7] - corners[o + 1];
    double vz = (double) corners[o + 8] - corners[o + 2];
    return new Vec(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
  }

  /** Length of a facet's edge from a corner, 0 to 2, to the next, mm. */
  public double edge(int slot, int corner) {
    int a = 9 * slot + 3 * corner;
    int b = 9 * slot + (corner == 2 ? 0 : 3 * corner + 3);
    double x = (double) corners[a] - corners[b];
    double y = (double) corners[a + 1] - corners[b + 1];
    double z = (double) corners[a + 2] - corners[b + 2];
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Height of a facet over its longest edge, mm. */
  public double breadth(int slot) {
    return 2 * area(slot) / Extremes.greater(edge(slot, 0), Extremes.greater(edge(slot, 1), edge(slot, 2)));
  }

  /** Whether a facet is too narrow to tell which way it faces, so that nothing can be measured from it. */
  public boolean isNeedle(int slot) {
    return breadth(slot) < NEEDLE;
  }

  /** Part of a facet's rounded normal. */
  public double normalX(int slot) {
    return normals[3 * slot];
  }

  /** Part of a facet's rounded normal. */
  public double normalY(int slot) {
    return normals[3 * slot + 1];
  }

  /** Part of a facet's rounded normal. */
  public double normalZ(int slot) {
    return normals[3 * slot + 2];
  }

  /** The product of a corner and a vector. */
  public double along(int slot, int corner, double ax, double ay, double az) {
    int o = 9 * slot + 3 * corner;
    return corners[o] * ax + corners[o + 1] * ay + corners[o + 2] * az;
  }

  /** The product of a facet's rounded normal and a vector. */
  public double alongNormal(int slot, double ax, double ay, double az) {
    return normals[3 * slot] * ax + normals[3 * slot + 1] * ay + normals[3 * slot + 2] * az;
  }

  /** A number not below the product of any place in a node's box and a vector. */
  double mostAlong(int node, double ax, double ay, double az) {
    int o = WIDTH * node;
    return Extremes.greater(ax * nodes[o], ax * nodes[o + 3]) + Extremes.greater(ay * nodes[o + 1], ay * nodes[o + 4])
        + Extremes.greater(az * nodes[o + 2], az * nodes[o + 5]);
  }

  /** Least coordinate of a facet's corners along an axis, mm. */
  public double least(int slot, int axis) {
    int o = 9 * slot + axis;
    return Extremes.less(corners[o], Extremes.less(corners[o + 3], corners[o + 6]));
  }

  /** Greatest coordinate of a facet's corners along an axis, mm. */
  public double most(int slot, int axis) {
    int o = 9 * slot + axis;
    return Extremes.greater(corners[o], Extremes.greater(corners[o + 3], corners[o + 6]));
  }

  /** Least coordinate of what lies below a node, mm; infinite for an empty node. */
  double low(int node, int axis) {
    return nodes[WIDTH * node + axis];
  }

  /** Greatest coordinate of what lies below a node, mm. */
  double high(int node, int axis) {
    return nodes[WIDTH * node + 3 + axis];
  }

  /** Least part along an axis of the normals below a node. */
  public double leastNormal(int node, int axis) {
    return normalNodes[WIDTH * node + axis];
  }

  /** All corners, nine numbers a slot; not to be changed. */
  float[] corners() {
    return corners;
  }

  /** Boxes of all nodes, {@value #WIDTH} numbers each, mm; inside out for an empty one. Not to be changed. */
  public float[] boxes() {
    return nodes;
  }

  /** Bounds of the normals below all nodes, likewise. */
  float[] normalBounds() {
    return normalNodes;
  }

  /** How far what lies below all nodes reaches the way it faces. */
  Slabs slabs() {
    return slabs;
  }

  /** The first leaf's node; nodes below it in number have children. */
  public int leaves() {
    return leaves;
  }

  /** First slot of a leaf. */
  public int firstSlot(int leaf) {
    return starts[leaf - leaves];
  }

  /** The slot after a leaf's last. */
  public int endSlot(int leaf) {
    return starts[leaf - leaves + 1];
  }

  /** The same facets in a tree by place alone. */
  PlaceTree places() {
    return places;
  }
}
