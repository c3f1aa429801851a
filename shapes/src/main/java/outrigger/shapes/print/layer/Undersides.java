package outrigger.shapes.print.layer;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.tree.FacetTree;

/**
 * The only places where a layer can lack support: facets that face downward beyond the overhang limit, and corners with
 * nothing of the surface below them, where something starts.
 *
 * <p>Why no others: from any point of a layer go straight down until the surface is met, then down the surface the
 * steepest way. Over facets within the limit that leads no further aside than the layer below carries, unless it ends
 * in a corner with nothing lower about it.
 */
public final class Undersides {
  /**
   * How much steeper than the limit a facet or a step between layers must be, degrees: rounding corners to the grid
   * turns facets of a tenth of a millimetre by 0.04 degrees.
   */
  public static final double PLAY = 0.25;
  /** Limits beyond it count as this lean, degrees from the vertical: that of a level underside has no tangent. */
  private static final double STEEPEST = 89.9;
  /** From this lean on an underside is called flat, degrees from the vertical. Own choice. */
  private static final double FLAT = 80;
  private static final double FLAT_SLOPE = StrictMath.tan(StrictMath.toRadians(FLAT));
  /** From this lean on it is level but for rounding. */
  private static final double LEVEL = 89;
  private static final double LEVEL_SLOPE = StrictMath.tan(StrictMath.toRadians(LEVEL));

  private final Mesh mesh;
  private final FacetTree tree;
  private final double least;
  private final BitSet steep = new BitSet();
  private final int[] pits;
  private final BoxTree pitTree;

  private Undersides(Mesh mesh, FacetTree tree, double limit) {
    this.mesh = mesh;
    this.tree = tree;
    least = -StrictMath.sin(StrictMath.toRadians(Math.min(STEEPEST, limit)));
    double tangent = tangent(limit);
    boolean[] facesDown = new boolean[mesh.vertexCount()];
    boolean[] isHigher = new boolean[mesh.vertexCount()];
    for (int f = 0; f < mesh.facetCount(); f++) {
      double down = -normal(f, 2);
      if (down > 0 && down > tangent * level(f)) {
        steep.set(f);
      }
      // of each edge the one facet asks at one end, the other at the other
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        isHigher[v] |= mesh.z(mesh.corner(f, (k + 1) % 3)) < mesh.z(v);
        facesDown[v] |= down > 0;
      }
    }
    pits = IntStream.range(0, facesDown.length).filter(v -> facesDown[v] && !isHigher[v]).toArray();
    pitTree = BoxTree.of(boxes());
  }

  /**
   * The undersides of a part.
   *
   * @param limit steepest overhang, degrees from the vertical
   */
  public static Undersides of(Specimen specimen, double limit) {
    return new Undersides(specimen.mesh(), specimen.facetTree(), limit);
  }

  private int[] boxes() {
    int[] boxes = new int[6 * pits.length];
    for (int i = 0; i < pits.length; i++) {
      for (int axis = 0; axis < 3; axis++) {
        boxes[6 * i + axis] = at(pits[i], axis);
        boxes[6 * i + 3 + axis] = boxes[6 * i + axis];
      }
    }
    return boxes;
  }

  /** The lean beyond which an underside is a concern, degrees from the vertical: a limit and the play it is given. */
  public static double beyond(double limit) {
    return Math.min(STEEPEST, limit + PLAY);
  }

  /** Tangent of that lean: how far what is held may stand out, as a part of its height. */
  public static double tangent(double limit) {
    return StrictMath.tan(StrictMath.toRadians(beyond(limit)));
  }

  /** One component of a facet's normal, as long as twice its area, square grid units. */
  public double normal(int facet, int axis) {
    int a = mesh.corner(facet, 0);
    int b = mesh.corner(facet, 1);
    int c = mesh.corner(facet, 2);
    int p = (axis + 1) % 3;
    int q = (axis + 2) % 3;
    return (double) (at(b, p) - at(a, p)) * (at(c, q) - at(a, q))
        - (double) (at(b, q) - at(a, q)) * (at(c, p) - at(a, p));
  }

  /** Length of the level part of a facet's normal. */
  private double level(int facet) {
    double x = normal(facet, 0);
    double y = normal(facet, 1);
    return Math.sqrt(x * x + y * y);
  }

  private int at(int v, int axis) {
    return axis == 0 ? mesh.x(v) : axis == 1 ? mesh.y(v) : mesh.z(v);
  }

  /** Lean of a facet that faces downward, degrees from the vertical. */
  public double lean(int facet) {
    return StrictMath.toDegrees(StrictMath.atan2(-normal(facet, 2), level(facet)));
  }

  /** Tangent of the lean of a facet that faces downward; infinite for a level one. */
  public double slope(int facet) {
    return -normal(facet, 2) / level(facet);
  }

  /** Whether a facet that faces downward leans so far that it is called flat. */
  public boolean isFlat(int facet) {
    return leansBy(facet, FLAT_SLOPE);
  }

  /** Whether a facet that faces downward is level but for rounding. */
  public boolean isLevel(int facet) {
    return leansBy(facet, LEVEL_SLOPE);
  }

  private boolean leansBy(int facet, double slope) {
    double x = normal(facet, 0);
    double y = normal(facet, 1);
    double down = -normal(facet, 2);
    return down * down >= slope * slope * (x * x + y * y);
  }

  /** Layers from the second on that may lack support. */
  BitSet layers(Layering layering) {
    int[] planes = new int[layering.count()];
    Arrays.setAll(planes, i -> (int) Math.floor(layering.middle(i) * Grid.PER_MM));
    BitSet layers = new BitSet(planes.length);
    for (int f = steep.nextSetBit(0); f >= 0; f = steep.nextSetBit(f + 1)) {
      int low = Integer.MAX_VALUE;
      int high = Integer.MIN_VALUE;
      for (int k = 0; k < 3; k++) {
        low = Math.min(low, mesh.z(mesh.corner(f, k)));
        high = Math.max(high, mesh.z(mesh.corner(f, k)));
      }
      layers.set(layerOf(planes, low), layerOf(planes, high) + 1);
    }
    for (int v : pits) {
      layers.set(layerOf(planes, mesh.z(v)));
    }
    layers.clear(0);
    layers.clear(planes.length, Math.max(planes.length, layers.length()));
    return layers;
  }

  /** The layer whose middle plane, a half step above the given one, is the first above a height. */
  private static int layerOf(int[] planes, int z) {
    int at = Arrays.binarySearch(planes, z);
    return at >= 0 ? at : -1 - at;
  }

  /** Gives the slot of each steep facet whose box meets the box asked for, mm. */
  void forEachSteep(double minX, double minY, double minZ, double maxX, double maxY, double maxZ,
      IntConsumer consumer) {
    give(1, new double[] {minX, minY, minZ, maxX, maxY, maxZ}, consumer);
  }

  private void give(int node, double[] box, IntConsumer consumer) {
    if (tree.leastNormal(node, 2) > least || !isMet(tree.boxes(), FacetTree.WIDTH * node, box)) {
      return;
    }
    if (node < tree.leaves()) {
      give(2 * node, box, consumer);
      give(2 * node + 1, box, consumer);
      return;
    }
    for (int slot = tree.firstSlot(node); slot < tree.endSlot(node); slot++) {
      if (meets(slot, box) && steep.get(tree.facet(slot))) {
        consumer.accept(slot);
      }
    }
  }

  private static boolean isMet(float[] b, int o, double[] box) {
    return b[o] <= box[3] && b[o + 3] >= box[0] && b[o + 1] <= box[4] && b[o + 4] >= box[1] && b[o + 2] <= box[5]
        && b[o + 5] >= box[2];
  }

  /** Whether the box of the facet in a slot meets the box asked for, mm. */
  private boolean meets(int slot, double... box) {
    return meets(slot, 0, box) && meets(slot, 1, box) && meets(slot, 2, box);
  }

  private boolean meets(int slot, int axis, double... box) {
    return tree.least(slot, axis) <= box[axis + 3] && tree.most(slot, axis) >= box[axis];
  }

  /** Least coordinate of the facet in a slot along an axis, mm. */
  double least(int slot, int axis) {
    return tree.least(slot, axis);
  }

  /** Greatest coordinate of the facet in a slot along an axis, mm. */
  double most(int slot, int axis) {
    return tree.most(slot, axis);
  }

  /** How far a place lies beside the facet in a slot as seen from below, mm; 0 under it. */
  double beside(int slot, double x, double y) {
    return Shadow.beside(Shadow.ends(mesh, tree.facet(slot)), x, y);
  }

  /** The facet in a slot. */
  int facet(int slot) {
    return tree.facet(slot);
  }

  /** Gives each pit in the box asked for, mm; vertex numbers of the mesh. */
  void forEachPit(double minX, double minY, double minZ, double maxX, double maxY, double maxZ,
      IntConsumer consumer) {
    pitTree.forEachOverlap((long) Math.floor(minX * Grid.PER_MM), (long) Math.floor(minY * Grid.PER_MM),
        (long) Math.floor(minZ * Grid.PER_MM), (long) Math.ceil(maxX * Grid.PER_MM),
        (long) Math.ceil(maxY * Grid.PER_MM), (long) Math.ceil(maxZ * Grid.PER_MM), i -> consumer.accept(pits[i]));
  }

  /**
   * Lean of every facet that faces downward, degrees; not a number for the others.
   *
   * @param all whether of those within the limit too
   */
  public double[] leans(boolean all) {
    double[] leans = new double[mesh.facetCount()];
    for (int f = 0; f < leans.length; f++) {
      leans[f] = steep.get(f) || all && normal(f, 2) < 0 ? lean(f) : Double.NaN;
    }
    return leans;
  }

  /** Height of a facet's highest corner, mm. */
  public double highest(int facet) {
    int a = mesh.z(mesh.corner(facet, 0));
    int b = mesh.z(mesh.corner(facet, 1));
    return Grid.toMm(Math.max(a, Math.max(b, mesh.z(mesh.corner(facet, 2)))));
  }
}
