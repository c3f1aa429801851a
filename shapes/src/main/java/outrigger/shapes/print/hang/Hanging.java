package outrigger.shapes.print.hang;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.layer.Patch;
import outrigger.shapes.print.layer.Shadow;
import outrigger.shapes.print.layer.Undersides;
import outrigger.shapes.print.slice.FlatBox;

/**
 * All that hangs together over layers.
 *
 * @param hangs its pieces, from the bed up
 * @param depth how far it stands out in all from what carries it firmly, where it is not held at both ends
 * @param patches the undersides of all pieces
 * @param area of the undersides as seen from below, mm^2
 */
record Hanging(List<Hang> hangs, double depth, List<Patch> patches, double area) {
  /** Smaller shares of the whole area do not tell how steep it is. */
  private static final double TELLING = 0.005;
  /** The steepest are sought first among slopes of this part of the greatest: own choice, no result depends on it. */
  private static final float FIRST = 0.2f;
  /** Heights count ten times as much as ways along the bed in seeking what is nearest, their squares so much: own choice. */
  private static final double HEIGHT = 100;
  /** How near the middle of what closes a gap is sought, mm. */
  private static final double CLOSE = 0.01;
  /** Fewer steps have no lean on the whole. */
  private static final int STEPS = 3;

  Hanging {
    hangs = List.copyOf(hangs);
    patches = List.copyOf(patches);
  }

  static Hanging of(List<Hang> hangs, double depth) {
    List<Patch> patches = new ArrayList<>();
    double area = 0;
    for (Hang hang : hangs) {
      patches.addAll(hang.patches());
      area += hang.area();
    }
    FlatBox box = bounds(hangs);
    // along a coil it adds up to more than it is wide
    return new Hanging(hangs, Math.min(depth, Math.hypot(box.width(), box.depth())), patches, area);
  }

  /** A piece by itself. */
  static Hanging of(Hang hang) {
    return of(List.of(hang), hang.depth());
  }

  /** The same without some of its pieces, each a hanging of its own. */
  Hanging without(List<Hanging> pieces) {
    List<Hang> left = new ArrayList<>(hangs);
    pieces.forEach(piece -> left.removeAll(piece.hangs()));
    return of(left, depth);
  }

  /** Area of what is not held at both ends where it stands out too far, as seen from below, mm^2. */
  double freeArea() {
    return hangs.stream().filter(hang -> hang.depth() > 0)
        .mapToDouble(hang -> hang.free().share() * hang.area()).sum();
  }

  /** The box round that. */
  FlatBox freeBounds() {
    return hangs.stream().filter(hang -> hang.depth() > 0).map(hang -> hang.free().box())
        .reduce(FlatBox.NONE, FlatBox::with);
  }

  /** Whether any of it starts in the air. */
  boolean starts() {
    return hangs.stream().anyMatch(Hang::starts);
  }

  /** The piece with the longest span. */
  Hang widest() {
    return hangs.stream().max(Comparator.comparingDouble(Hang::span)).orElseThrow();
  }

  /**
   * Lean of what stands out in steps on the whole, degrees from the vertical; not a number unless there are three or more.
   *
   * @param most a step that stands out further is none, mm
   */
  double lean(double most) {
    double[] heights = hangs.stream().filter(hang -> hang.depth() > 0).mapToDouble(Hang::z).distinct().sorted().toArray();
    double deepest = hangs.stream().mapToDouble(Hanging::edgeDepth).max().orElse(0);
    int steps = heights.length;
    return steps < STEPS || deepest > most ? Double.NaN
        : StrictMath.toDegrees(StrictMath.atan2(depth, (heights[steps - 1] - heights[0]) * steps / (steps - 1)));
  }

  /** How far the edges of a piece stand out, mm: of square corners that stand out 1.41 times as far what they leave. */
  private static double edgeDepth(Hang hang) {
    return hang.outmost() == Hang.Outmost.SQUARE_CORNERS ? hang.depth() / Math.sqrt(2) : hang.depth();
  }

  /** Whether it is no wider than a ledge may be, held nowhere at both ends, though its square corners stand out further. */
  boolean isNarrowButCorners() {
    return deepest().outmost() == Hang.Outmost.SQUARE_CORNERS && depth <= deepest().depth() && widest().span() == 0;
  }

  /** Middle of the undersides, x, y, z; of the lowest piece if there is no underside to speak of. */
  double[] middle() {
    if (area == 0) {
      Hang first = hangs.get(0);
      return new double[] {(first.piece().minX() + first.piece().maxX()) / 2,
          (first.piece().minY() + first.piece().maxY()) / 2, first.z()};
    }
    double[] middle = new double[3];
    for (Patch patch : patches) {
      middle[0] += patch.area() * patch.x() / area;
      middle[1] += patch.area() * patch.y() / area;
      middle[2] += patch.area() * patch.z() / area;
    }
    return middle;
  }

  /**
   * The middle, or where undersides lie all round it and not there, the middle of the one nearest to it, in height above
   * all.
   */
  double[] place(Mesh mesh) {
    double[] middle = middle();
    if (area == 0) {
      return middle;
    }
    Patch nearest = patches.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Patch patch : patches) {
      if (Shadow.holds(mesh, patch.facet(), middle[0], middle[1])) {
        return middle;
      }
      double square = square(patch, middle);
      if (square < least) {
        least = square;
        nearest = patch;
      }
    }
    return new double[] {nearest.x(), nearest.y(), nearest.z()};
  }

  private Hang deepest() {
    return hangs.stream().filter(hang -> hang.depth() > 0).max(Comparator.comparingDouble(Hang::depth)).orElseThrow();
  }

  /** Of the lowest pieces that start in the air the largest. */
  Hang firstStart() {
    return hangs.stream().filter(Hang::starts).min(Comparator.comparingInt(Hang::layer)
        .thenComparingDouble(hang -> -hang.piece().area())).orElseThrow();
  }

  /**
   * Whether its highest pieces close a gap: held at both ends, or on most of their rims.
   *
   * @param ledge how far corners of what is held in several places may stand out, mm
   */
  boolean closes(double ledge) {
    return highest().allMatch(hang -> !hang.starts() && (hang.depth() == 0 && hang.span() > 0
        || hang.rim().isMostlyCarried() && hang.depth() <= (hang.rim().holds() > 1 ? ledge : 0)));
  }

  private Stream<Hang> highest() {
    int top = hangs.stream().mapToInt(Hang::layer).max().orElse(0);
    return hangs.stream().filter(hang -> hang.layer() == top);
  }

  /**
   * How far what closes a gap stands out in all: on the way and, as far as undersides slope there, in the layer that closes
   * it, which may be any part of the roof.
   *
   * @param slopes whether a facet is not level
   */
  double depthClosed(IntPredicate slopes) {
    double corners = highest().mapToDouble(Hang::depth).max().orElse(0);
    return depth - corners + highest().mapToDouble(hang -> sloping(hang, slopes)).max().orElse(0);
  }

  /** How far a piece stands out on either side, as much of it as slopes, mm. */
  private static double sloping(Hang hang, IntPredicate slopes) {
    double area = hang.area();
    return area == 0 ? 0 : hang.piece().inscribedRadius(CLOSE) * hang.patches().stream()
        .filter(patch -> slopes.test(patch.facet())).mapToDouble(Patch::area).sum() / area;
  }

  /** Whether it stands out farthest at a corner alone. */
  boolean isPeaked() {
    return deepest().isPeaked();
  }

  /** Where it stands out farthest, in the height of its undersides. */
  double[] farthest() {
    Hang deepest = deepest();
    double[] at = deepest.loose().farthest();
    return new double[] {at[0], at[1], of(deepest).middle()[2]};
  }

  private static double square(Patch patch, double... p) {
    return (patch.x() - p[0]) * (patch.x() - p[0]) + (patch.y() - p[1]) * (patch.y() - p[1])
        + HEIGHT * (patch.z() - p[2]) * (patch.z() - p[2]);
  }

  /** Lean of the steepest of its undersides that stand out, slivers left out, degrees from the vertical. */
  double steepest(Undersides undersides) {
    List<Patch> loose = new ArrayList<>(patches.size());
    double all = 0;
    for (Hang hang : hangs) {
      if (hang.depth() > 0) {
        loose.addAll(hang.patches());
        all += hang.area();
      }
    }
    float[] slopes = new float[loose.size()];
    float most = 0;
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (float) undersides.slope(loose.get(i).facet());
      most = Math.max(most, slopes[i]);
    }
    long[] order = steepest(loose, slopes, most, all);
    double sum = 0;
    for (int k = order.length - 1; k >= 0; k--) {
      Patch patch = loose.get((int) order[k]);
      sum += patch.area();
      if (sum >= TELLING * all) {
        return undersides.lean(patch.facet());
      }
    }
    return 0;
  }

  /** Slopes with their patches' numbers, rising: the steepest, or all if these are too small a share. */
  private static long[] steepest(List<Patch> patches, float[] slopes, float most, double all) {
    long[] order = new long[slopes.length];
    for (float least = FIRST * most; true; least = 0) {
      int count = 0;
      double sum = 0;
      for (int i = 0; i < slopes.length; i++) {
        if (slopes[i] >= least) {
          order[count++] = (long) Float.floatToIntBits(slopes[i]) << Integer.SIZE | i;
          sum += patches.get(i).area();
        }
      }
      if (sum >= TELLING * all || least == 0) {
        long[] sorted = Arrays.copyOf(order, count);
        Arrays.sort(sorted);
        return sorted;
      }
    }
  }

  /** Least x, y, z and greatest of its undersides; of the lowest piece if there is none to speak of. */
  double[] box() {
    FlatBox b = bounds();
    double low = patches.stream().mapToDouble(Patch::low).min().orElse(hangs.get(0).z());
    double high = patches.stream().mapToDouble(Patch::z).max().orElse(hangs.get(0).z());
    return new double[] {b.minX(), b.minY(), low, b.maxX(), b.maxY(), high};
  }

  /** The box round all pieces. */
  FlatBox bounds() {
    return bounds(hangs);
  }

  private static FlatBox bounds(List<Hang> hangs) {
    return hangs.stream().map(hang -> FlatBox.of(hang.piece())).reduce(FlatBox.NONE, FlatBox::with);
  }
}
