package outrigger.shapes.print.wall;

import java.util.Random;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.facet.Vec;

/** Thickness measured by rays against every facet in turn: slow, and with nothing in common with the gauges. */
final class RayWalls {
  /** cos 25 degrees: facets that lean more to each other form an edge. */
  private static final double FACING = 0.906;
  private static final double SELF = 1e-4;
  /** The narrowest place may lie on the edge of an end face, and just outside. */
  private static final double[] NUDGES = {0, 0, 0, 0.01, 0, 0, -0.01, 0, 0, 0, 0.01, 0, 0, -0.01, 0, 0, 0, 0.01, 0, 0, -0.01};

  private final double[][][] facets;
  private final double[][] normals;
  private final double[] areas;

  RayWalls(Mesh mesh) {
    facets = new double[mesh.facetCount()][3][];
    normals = new double[facets.length][];
    areas = new double[facets.length];
    for (int f = 0; f < facets.length; f++) {
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        facets[f][k] = new double[] {mesh.x(v) * Grid.STEP, mesh.y(v) * Grid.STEP, mesh.z(v) * Grid.STEP};
      }
      double[] n = cross(minus(facets[f][1], facets[f][0]), minus(facets[f][2], facets[f][0]));
      double length = Math.sqrt(dot(n, n));
      areas[f] = length / 2;
      normals[f] = new double[] {n[0] / length, n[1] / length, n[2] / length};
    }
  }

  /** The shortest way inward from so many places, spread by area, to a facet that faces the one left. */
  double shortest(int places, Random random) {
    double all = 0;
    for (double area : areas) {
      all += area;
    }
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places; i++) {
      double left = all * random.nextDouble();
      int f = 0;
      while (f < areas.length - 1 && left > areas[f]) {
        left -= areas[f++];
      }
      double s = Math.sqrt(random.nextDouble());
      double t = random.nextDouble();
      double[] p = new double[3];
      for (int k = 0; k < 3; k++) {
        p[k] = (1 - s) * facets[f][0][k] + s * (1 - t) * facets[f][1][k] + s * t * facets[f][2][k];
      }
      double[] inward = {-normals[f][0], -normals[f][1], -normals[f][2]};
      double[] hit = first(p, inward);
      if (hit[1] >= 0 && dot(normals[(int) hit[1]], inward) > FACING) {
        shortest = Math.min(shortest, hit[0]);
      }
    }
    return shortest;
  }

  /** The shortest way through a place along any facet's normal from facet to facet that face each other. */
  double across(Vec place) {
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < NUDGES.length; i += 3) {
      double[] p = {place.x() + NUDGES[i], place.y() + NUDGES[i + 1], place.z() + NUDGES[i + 2]};
      for (double[] n : normals) {
        double[] back = {-n[0], -n[1], -n[2]};
        double[] ahead = first(p, n);
        double[] behind = ahead[0] < 1 ? first(p, back) : ahead;
        if (ahead[0] < 1 && behind[1] >= 0 && dot(normals[(int) ahead[1]], n) > FACING
            && dot(normals[(int) behind[1]], back) > FACING) {
          shortest = Math.min(shortest, ahead[0] + behind[0]);
        }
      }
    }
    return shortest;
  }

  /** Way to the first facet met, and its number, -1 for none. */
  private double[] first(double[] p, double[] d) {
    double best = Double.POSITIVE_INFINITY;
    int facet = -1;
    for (int f = 0; f < facets.length; f++) {
      double facing = dot(normals[f], d);
      double way = dot(normals[f], minus(facets[f][0], p)) / facing;
      if (facing > 1e-9 && way > SELF && way < best && holds(f, p, d, way)) {
        best = way;
        facet = f;
      }
    }
    return new double[] {best, facet};
  }

  private boolean holds(int f, double[] p, double[] d, double way) {
    double[] q = {p[0] + way * d[0], p[1] + way * d[1], p[2] + way * d[2]};
    for (int k = 0; k < 3; k++) {
      double[] edge = minus(facets[f][(k + 1) % 3], facets[f][k]);
      if (dot(cross(edge, minus(q, facets[f][k])), normals[f]) < -1e-9) {
        return false;
      }
    }
    return true;
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
  }
}
