package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/** Lays a part on the bed in one way and weighs what that means. */
final class PoseTrial {
  /** What lies within this of the bed touches it, mm. */
  private static final double TOUCH = 0.02;
  /** A facet whose sine of slope exceeds the limit's by less is at the limit. */
  private static final double AT_LIMIT = 0.005;
  /** From this ratio of height to the larger side a part stands on end. */
  private static final double ON_END = 1.5;
  /** cos 45 degrees: layers whose normal lies nearer to the load are pulled apart by it; those of a slanted edge are not. */
  private static final double ACROSS = 0.71;

  private final Specimen specimen;
  private final Mesh mesh;
  private final double[] x;
  private final double[] y;
  private final double[] down;
  private double lowest;

  private PoseTrial(Specimen specimen, double... down) {
    this.specimen = specimen;
    this.mesh = specimen.mesh();
    this.down = down;
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
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double px = mesh.x(v);
      double py = mesh.y(v);
      double pz = mesh.z(v);
      double a = x[0] * px + x[1] * py + x[2] * pz;
      double b = y[0] * px + y[1] * py + y[2] * pz;
      double c = down[0] * px + down[1] * py + down[2] * pz;
      most[0] = a > most[0] ? a : most[0];
      least[0] = a < least[0] ? a : least[0];
      most[1] = b > most[1] ? b : most[1];
      least[1] = b < least[1] ? b : least[1];
      most[2] = c > most[2] ? c : most[2];
      least[2] = c < least[2] ? c : least[2];
    }
    for (int k = 0; k < 3; k++) {
      most[k] *= Grid.STEP;
      least[k] *= Grid.STEP;
    }
    lowest = most[2];
    double height = most[2] - least[2];
    double wide = Math.max(most[0] - least[0], most[1] - least[1]);
    double narrow = Math.min(most[0] - least[0], most[1] - least[1]);
    double[] below = below();
    return new Pose(down[0], down[1], down[2], below[0], below[1], height, tilt(),
        specimen.load().map(this::isAcross).orElse(height > ON_END * wide), fits(wide, narrow, height));
  }

  private boolean isAcross(Axis load) {
    return Math.abs(down[load.ordinal()]) > ACROSS;
  }

  private double along(double[] axis, int v) {
    return (axis[0] * mesh.x(v) + axis[1] * mesh.y(v) + axis[2] * mesh.z(v)) * Grid.STEP;
  }

  private boolean fits(double wide, double narrow, double height) {
    double brim = 2 * specimen.limit(Limit.BRIM);
    double bedX = specimen.limit(Limit.BED_X);
    double bedY = specimen.limit(Limit.BED_Y);
    return wide + brim <= Math.max(bedX, bedY) && narrow + brim <= Math.min(bedX, bedY)
        && height <= specimen.limit(Limit.BED_Z);
  }

  /** Area that touches the bed, and volume below what hangs over. */
  private double[] below() {
    double steep = StrictMath.sin(StrictMath.toRadians(specimen.limit(Limit.OVERHANG))) + AT_LIMIT;
    Facets facets = specimen.facets();
    double contact = 0;
    double support = 0;
    for (int f = 0; f < mesh.facetCount(); f++) {
      double facing = facets.normal(f, 0) * down[0] + facets.normal(f, 1) * down[1] + facets.normal(f, 2) * down[2];
      if (facing <= steep) {
        continue;
      }
      double area = facing * facets.area(f);
      double mean = 0;
      double most = 0;
      for (int k = 0; k < 3; k++) {
        double over = lowest - along(down, mesh.corner(f, k));
        mean += over / 3;
        most = Math.max(most, over);
      }
      contact += most <= TOUCH ? area : 0;
      support += most <= TOUCH ? 0 : area * mean;
    }
    return new double[] {contact, support};
  }

  /** Least angle by which the part must be tilted about an edge of its foot before it falls, degrees. */
  private double tilt() {
    List<double[]> foot = new ArrayList<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      if (lowest - along(down, v) <= TOUCH) {
        foot.add(new double[] {along(x, v), along(y, v)});
      }
    }
    double[] c = {specimen.measures().centroidX(), specimen.measures().centroidY(), specimen.measures().centroidZ()};
    double high = lowest - dot(down, c);
    double margin = Foot.margin(foot, dot(x, c), dot(y, c));
    return margin <= 0 ? 0 : StrictMath.toDegrees(StrictMath.atan2(margin, high));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
