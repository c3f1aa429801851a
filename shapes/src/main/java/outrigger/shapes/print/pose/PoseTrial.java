package outrigger.shapes.print.pose;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.slice.FlatHull;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.FarSide;

/** Lays a part on the bed in one way and weighs what that means. */
final class PoseTrial {
  /** What lies within this of the bed touches it, mm: own choice, a tenth of a common layer. */
  private static final double TOUCH = 0.02;
  /** A facet whose sine of slope exceeds the limit's by less is at the limit. */
  private static final double AT_LIMIT = 0.005;
  /** From this ratio of height to the larger side a part stands on end: own choice. */
  private static final double ON_END = 1.5;
  /** cos 45 degrees: layers whose normal lies nearer to the load are pulled apart by it; those of a slanted edge are not. */
  private static final double ACROSS = 0.71;

  private final Specimen specimen;
  private final double[] x;
  private final double[] y;
  private final double[] down;
  private final double steep;
  /** x, y of the points that touch the bed, mm. */
  private double[] foot = new double[64];
  private int footNumbers;
  private double lowest;
  private double contact;
  private double touching;

  private PoseTrial(Specimen specimen, double... down) {
    this.specimen = specimen;
    this.down = down;
    steep = StrictMath.sin(StrictMath.toRadians(specimen.limit(Limit.OVERHANG))) + AT_LIMIT;
    // any axis that does not lie near it
    double[] other = Math.abs(down[0]) < 0.6 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
    x = unit(down[1] * other[2] - down[2] * other[1], down[2] * other[0] - down[0] * other[2],
        down[0] * other[1] - down[1] * other[0]);
    y = unit(down[1] * x[2] - down[2] * x[1], down[2] * x[0] - down[0] * x[2], down[0] * x[1] - down[1] * x[0]);
  }

  private static double[] unit(double a, double b, double c) {
    double length = Math.sqrt(a * a + b * b + c * c);
    return new double[] {a / length, b / length, c / length};
  }

  static Pose of(Specimen specimen, double... down) {
    return new PoseTrial(specimen, down).weigh();
  }

  private Pose weigh() {
    FacetTree tree = specimen.facetTree();
    lowest = most(tree, down, 1);
    double height = lowest + most(tree, down, -1);
    double a = most(tree, x, 1) + most(tree, x, -1);
    double b = most(tree, y, 1) + most(tree, y, -1);
    double wide = Math.max(a, b);
    double narrow = Math.min(a, b);
    lay(tree);
    double support = specimen.directions().below(down, lowest, steep) - touching;
    return new Pose(down[0], down[1], down[2], contact, support, height, tilt(),
        specimen.load().map(this::isAcross).orElse(height > ON_END * wide), fits(wide, narrow, height));
  }

  private static double most(FacetTree tree, double[] axis, int sign) {
    return FarSide.most(tree, sign * axis[0], sign * axis[1], sign * axis[2]);
  }

  private boolean isAcross(Axis load) {
    return Math.abs(down[load.ordinal()]) > ACROSS;
  }

  private boolean fits(double wide, double narrow, double height) {
    double brim = 2 * specimen.limit(Limit.BRIM);
    double bedX = specimen.limit(Limit.BED_X);
    double bedY = specimen.limit(Limit.BED_Y);
    return wide + brim <= Math.max(bedX, bedY) && narrow + brim <= Math.min(bedX, bedY)
        && height <= specimen.limit(Limit.BED_Z);
  }

  /** Gathers what touches the bed: the points, the area, and the volume that would count as below it. */
  private void lay(FacetTree tree) {
    Facets facets = specimen.facets();
    Mesh mesh = specimen.mesh();
    BitSet taken = new BitSet(mesh.vertexCount());
    FarSide.forEach(tree, down, lowest - TOUCH, slot -> {
      int touches = 0;
      double over = 0;
      for (int k = 0; k < 3; k++) {
        double gap = lowest - tree.along(slot, k, down[0], down[1], down[2]);
        over += gap / 3;
        if (gap <= TOUCH) {
          touches++;
          int vertex = mesh.corner(tree.facet(slot), k);
          if (!taken.get(vertex)) {
            taken.set(vertex);
            stand(tree.along(slot, k, x[0], x[1], x[2]), tree.along(slot, k, y[0], y[1], y[2]));
          }
        }
      }
      double facing = tree.alongNormal(slot, down[0], down[1], down[2]);
      if (touches == 3 && facing > steep) {
        double area = facing * facets.area(tree.facet(slot));
        contact += area;
        touching += area * over;
      }
    });
  }

  private void stand(double px, double py) {
    if (footNumbers == foot.length) {
      foot = Arrays.copyOf(foot, 2 * footNumbers);
    }
    foot[footNumbers++] = px;
    foot[footNumbers++] = py;
  }

  /** Least angle by which the part must be tilted about an edge of its foot before it falls, degrees. */
  private double tilt() {
    double[] c = {specimen.measures().centroidX(), specimen.measures().centroidY(), specimen.measures().centroidZ()};
    double high = lowest - dot(down, c);
    FlatHull hull = FlatHull.around(List.of(Arrays.copyOf(foot, footNumbers)));
    double margin = hull.isArea() ? hull.inside(dot(x, c), dot(y, c)) : 0;
    return margin <= 0 ? 0 : StrictMath.toDegrees(StrictMath.atan2(margin, high));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
