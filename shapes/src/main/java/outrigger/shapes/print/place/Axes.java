package outrigger.shapes.print.place;

import java.util.Arrays;
import outrigger.shapes.print.facet.Vec;

/** The principal axes of a symmetric matrix of order 3, by Jacobi's turns. */
final class Axes {
  /** Turns at most, own choice: each lessens the squares off the diagonal by a third or more. */
  private static final int TURNS = 60;
  /** What is off the diagonal is nothing below this part of the trace, some tens of roundings. */
  private static final double ROUNDING = 1e-14;

  private final double[][] a;
  private final double[][] v = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
  private final Integer[] order = {0, 1, 2};

  /** Takes the sum of w n n^T, row by row. */
  Axes(double[][] matrix) {
    a = new double[][] {matrix[0].clone(), matrix[1].clone(), matrix[2].clone()};
    for (int i = 0; i < TURNS; i++) {
      int p = Math.abs(a[0][1]) >= Math.max(Math.abs(a[0][2]), Math.abs(a[1][2])) ? 0
          : Math.abs(a[0][2]) >= Math.abs(a[1][2]) ? 0 : 1;
      int q = p == 1 ? 2 : Math.abs(a[0][1]) >= Math.abs(a[0][2]) ? 1 : 2;
      if (Math.abs(a[p][q]) <= ROUNDING * (a[0][0] + a[1][1] + a[2][2])) {
        break;
      }
      turn(p, q);
    }
    Arrays.sort(order, (i, j) -> Double.compare(a[j][j], a[i][i]));
  }

  private void turn(int p, int q) {
    double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
    double t = Math.copySign(1 / (Math.abs(theta) + Math.sqrt(theta * theta + 1)), theta);
    double c = 1 / Math.sqrt(t * t + 1);
    double s = t * c;
    for (int k = 0; k < 3; k++) {
      double kp = a[k][p];
      a[k][p] = c * kp - s * a[k][q];
      a[k][q] = s * kp + c * a[k][q];
    }
    for (int k = 0; k < 3; k++) {
      double pk = a[p][k];
      a[p][k] = c * pk - s * a[q][k];
      a[q][k] = s * pk + c * a[q][k];
      double vk = v[k][p];
      v[k][p] = c * vk - s * v[k][q];
      v[k][q] = s * vk + c * v[k][q];
    }
  }

  /** Value along an axis, 0 for the greatest to 2 for the least. */
  double value(int i) {
    return a[order[i]][order[i]];
  }

  /** Unit vector of an axis, 0 for the greatest value to 2 for the least. */
  Vec axis(int i) {
    int k = order[i];
    return new Vec(v[0][k], v[1][k], v[2][k]);
  }
}
