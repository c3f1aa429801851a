package outrigger.generator.measure;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/**
 * Callipers for meshes: measures what the file will hold, not what the tables say. Lengths in mm.
 *
 * <p>A point on a plane across an axis is given by its two other coordinates in alphabetical order: across X as
 * (y, z), across Y as (x, z), across Z as (x, y).
 */
public final class MeshGauge {
  private final Mesh mesh;

  private MeshGauge(Mesh mesh) {
    this.mesh = mesh;
  }

  /** A gauge for one mesh. */
  public static MeshGauge of(Mesh mesh) {
    return new MeshGauge(mesh);
  }

  /** One facet that faces downward: its slope and where it lies. */
  public record Overhang(double degrees, double x, double y, double z, double lowest, double highest, double area) {}

  /** Smallest coordinate along an axis. */
  public double min(Axis axis) {
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      least = Math.min(least, at(v, axis));
    }
    return least;
  }

  /** Largest coordinate along an axis. */
  public double max(Axis axis) {
    double most = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      most = Math.max(most, at(v, axis));
    }
    return most;
  }

  /** Overall size along an axis. */
  public double size(Axis axis) {
    return max(axis) - min(axis);
  }

  /**
   * Diameter of the largest pin about a point that passes the section across an axis.
   *
   * @param axis the direction of the hole
   * @param at where the section is taken; choose a level that holds no flat face
   * @param u centre, first of the two other coordinates
   * @param v centre, second of them
   */
  public double pinDiameter(Axis axis, double at, double u, double v) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double[] s : section(axis, at)) {
      nearest = Math.min(nearest, distance(s, u, v));
    }
    return 2 * nearest;
  }

  /** Length of the section's outline, outer and inner, across an axis; 0 where the plane misses the part. */
  public double outline(Axis axis, double at) {
    double sum = 0;
    for (double[] s : section(axis, at)) {
      sum += Math.hypot(s[2] - s[0], s[3] - s[1]);
    }
    return sum;
  }

  /** Area of the section across an axis, holes left out. */
  public double sectionArea(Axis axis, double at) {
    double twice = 0;
    for (double[] s : section(axis, at)) {
      twice += s[0] * s[3] - s[1] * s[2];
    }
    return Math.abs(twice) / 2;
  }

  /**
   * Where a line along an axis enters and leaves the part, in rising order; an even count for a line that misses
   * every edge.
   */
  public List<Double> crossings(Axis axis, double u, double v) {
    List<Double> found = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      double[] a = corner(f, 0, axis);
      double[] b = corner(f, 1, axis);
      double[] c = corner(f, 2, axis);
      double whole = turn(a, b, c[0], c[1]);
      double wa = turn(b, c, u, v) / whole;
      double wb = turn(c, a, u, v) / whole;
      double wc = turn(a, b, u, v) / whole;
      if (whole != 0 && wa >= 0 && wb >= 0 && wc >= 0) {
        found.add(wa * a[2] + wb * b[2] + wc * c[2]);
      }
    }
    found.sort(null);
    return found;
  }

  /** Facets above the bed that face downward and lean further from the vertical than a limit in degrees. */
  public List<Overhang> overhangs(double limitDegrees) {
    double bed = min(Axis.Z);
    List<Overhang> found = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      double[] a = corner(f, 0, Axis.Z);
      double[] b = corner(f, 1, Axis.Z);
      double[] c = corner(f, 2, Axis.Z);
      double nx = (b[1] - a[1]) * (c[2] - a[2]) - (b[2] - a[2]) * (c[1] - a[1]);
      double ny = (b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2]);
      double nz = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      double degrees = Math.toDegrees(Math.atan2(-nz, Math.hypot(nx, ny)));
      double highest = Math.max(a[2], Math.max(b[2], c[2]));
      if (degrees > limitDegrees && highest > bed) {
        found.add(new Overhang(degrees, (a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3,
            Math.min(a[2], Math.min(b[2], c[2])), highest, Math.sqrt(nx * nx + ny * ny + nz * nz) / 2));
      }
    }
    return found;
  }

  /** Segments of the section across an axis, each u1, v1, u2, v2, with the matter always on the same hand. */
  private List<double[]> section(Axis axis, double at) {
    List<double[]> segments = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      double[] from = null;
      double[] to = null;
      for (int k = 0; k < 3; k++) {
        double[] p = corner(f, k, axis);
        double[] q = corner(f, (k + 1) % 3, axis);
        if ((p[2] < at) != (q[2] < at)) {
          double t = (at - p[2]) / (q[2] - p[2]);
          double[] hit = {p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])};
          if (p[2] < at) {
            from = hit;
          } else {
            to = hit;
          }
        }
      }
      if (from != null && to != null) {
        segments.add(new double[] {from[0], from[1], to[0], to[1]});
      }
    }
    return segments;
  }

  private static double distance(double[] s, double u, double v) {
    double du = s[2] - s[0];
    double dv = s[3] - s[1];
    double length = du * du + dv * dv;
    double t = length == 0 ? 0 : Math.max(0, Math.min(1, ((u - s[0]) * du + (v - s[1]) * dv) / length));
    return Math.hypot(u - s[0] - t * du, v - s[1] - t * dv);
  }

  private static double turn(double[] a, double[] b, double u, double v) {
    return (b[0] - a[0]) * (v - a[1]) - (b[1] - a[1]) * (u - a[0]);
  }

  /** A facet's corner as the two coordinates across an axis and the one along it. */
  private double[] corner(int facet, int k, Axis axis) {
    int v = mesh.corner(facet, k);
    return switch (axis) {
      case X -> new double[] {at(v, Axis.Y), at(v, Axis.Z), at(v, Axis.X)};
      case Y -> new double[] {at(v, Axis.X), at(v, Axis.Z), at(v, Axis.Y)};
      case Z -> new double[] {at(v, Axis.X), at(v, Axis.Y), at(v, Axis.Z)};
    };
  }

  private double at(int vertex, Axis axis) {
    return Grid.toMm(switch (axis) {
      case X -> mesh.x(vertex);
      case Y -> mesh.y(vertex);
      case Z -> mesh.z(vertex);
    });
  }
}
