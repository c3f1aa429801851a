package outrigger.shapes.check;

import outrigger.shapes.num.Grid;

/** Sound shapes made by hand, each facet outward; sizes in grid units. */
public final class Meshes {
  /** One millimetre. */
  public static final int MM = Grid.PER_MM;

  private Meshes() {}

  /** A box with one corner at the origin. */
  public static Soup box(int x, int y, int z) {
    return new Soup().box(0, 0, 0, x, y, z);
  }

  /** Boxes one in the other, outermost first, alternately solid and void. */
  public static Soup nest(int depth) {
    Soup soup = new Soup();
    for (int i = 0; i < depth; i++) {
      Soup box = new Soup().box(i * MM, i * MM, i * MM, (99 - i) * MM, (77 - i) * MM, (55 - i) * MM);
      soup.add(i % 2 == 0 ? box : box.flip());
    }
    return soup;
  }

  /** The tetrahedron under the corner of a cube. */
  public static Soup tetrahedron(int leg) {
    int[] o = {0, 0, 0};
    int[] x = {leg, 0, 0};
    int[] y = {0, leg, 0};
    int[] z = {0, 0, leg};
    return new Soup().facet(o, y, x).facet(o, z, y).facet(o, x, z).facet(x, y, z);
  }

  /** Corners on a circle about Z, counter-clockwise, rounded to the grid. */
  public static int[][] circle(int n, double radius, int z) {
    int[][] p = new int[n][];
    for (int i = 0; i < n; i++) {
      double a = 2 * StrictMath.PI * i / n;
      p[i] = new int[] {(int) Math.rint(radius * StrictMath.cos(a)), (int) Math.rint(radius * StrictMath.sin(a)), z};
    }
    return p;
  }

  /** Walls between two loops of as many corners, the first seen from below. */
  static Soup wall(int[][] low, int[][] high) {
    Soup soup = new Soup();
    for (int i = 0; i < low.length; i++) {
      int j = (i + 1) % low.length;
      soup.facet(low[i], low[j], high[j]).facet(low[i], high[j], high[i]);
    }
    return soup;
  }

  /** The loop the other way round. */
  static int[][] reversed(int[][] loop) {
    int[][] r = new int[loop.length][];
    for (int i = 0; i < loop.length; i++) {
      r[i] = loop[loop.length - 1 - i];
    }
    return r;
  }

  /** An upright prism over a convex loop. */
  public static Soup prism(int[][] loop, int height) {
    int[][] top = new int[loop.length][];
    for (int i = 0; i < loop.length; i++) {
      top[i] = new int[] {loop[i][0], loop[i][1], loop[i][2] + height};
    }
    return wall(loop, top).fan(top).fan(reversed(loop));
  }

  /** A cone on a disc: 2n - 2 facets, the n of the flank first. */
  public static Soup cone(int n, double radius, int height) {
    int[][] loop = circle(n, radius, 0);
    Soup soup = new Soup();
    for (int i = 0; i < n; i++) {
      soup.facet(loop[i], loop[(i + 1) % n], new int[] {0, 0, height});
    }
    return soup.fan(reversed(loop));
  }

  /** A ring about Z: n sections round, m corners a section. */
  public static Soup torus(int n, int m, double large, double small) {
    int[][][] p = new int[n][m][];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < m; j++) {
        double a = 2 * StrictMath.PI * i / n;
        double b = 2 * StrictMath.PI * j / m;
        double r = large + small * StrictMath.cos(b);
        p[i][j] = new int[] {(int) Math.rint(r * StrictMath.cos(a)), (int) Math.rint(r * StrictMath.sin(a)),
            (int) Math.rint(small * StrictMath.sin(b))};
      }
    }
    Soup soup = new Soup();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < m; j++) {
        int k = (i + 1) % n;
        int l = (j + 1) % m;
        soup.facet(p[i][j], p[k][j], p[k][l]).facet(p[i][j], p[k][l], p[i][l]);
      }
    }
    return soup;
  }

  /** A ball from an octahedron, each facet cut in four so many times. */
  public static Soup ball(int times, double radius) {
    int[][] axis = {{1, 0, 0}, {0, 1, 0}, {-1, 0, 0}, {0, -1, 0}};
    double[][] d = new double[4][];
    Soup soup = new Soup();
    for (int i = 0; i < 4; i++) {
      d[i] = new double[] {axis[i][0], axis[i][1], 0};
    }
    for (int i = 0; i < 4; i++) {
      split(soup, times, radius, d[i], d[(i + 1) % 4], new double[] {0, 0, 1});
      split(soup, times, radius, d[(i + 1) % 4], d[i], new double[] {0, 0, -1});
    }
    return soup;
  }

  private static void split(Soup soup, int times, double radius, double[] a, double[] b, double[] c) {
    if (times == 0) {
      soup.facet(onBall(a, radius), onBall(b, radius), onBall(c, radius));
      return;
    }
    double[] ab = middle(a, b);
    double[] bc = middle(b, c);
    double[] ca = middle(c, a);
    split(soup, times - 1, radius, a, ab, ca);
    split(soup, times - 1, radius, ab, b, bc);
    split(soup, times - 1, radius, ca, bc, c);
    split(soup, times - 1, radius, ab, bc, ca);
  }

  private static double[] middle(double[] a, double[] b) {
    double[] m = {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    double length = Math.sqrt(m[0] * m[0] + m[1] * m[1] + m[2] * m[2]);
    return new double[] {m[0] / length, m[1] / length, m[2] / length};
  }

  private static int[] onBall(double[] d, double radius) {
    return new int[] {(int) Math.rint(d[0] * radius), (int) Math.rint(d[1] * radius), (int) Math.rint(d[2] * radius)};
  }

  /** The outer faces of cubes on a lattice, two facets each. Sound unless cubes meet along an edge or corner only. */
  public static Soup cubes(boolean[][][] full, int side) {
    Soup soup = new Soup();
    for (int x = 0; x < full.length; x++) {
      for (int y = 0; y < full[x].length; y++) {
        for (int z = 0; z < full[x][y].length; z++) {
          if (full[x][y][z]) {
            cube(soup, full, x, y, z, side);
          }
        }
      }
    }
    return soup;
  }

  private static void cube(Soup soup, boolean[][][] full, int x, int y, int z, int side) {
    int[][] next = {{0, 0, -1}, {0, 0, 1}, {0, -1, 0}, {1, 0, 0}, {0, 1, 0}, {-1, 0, 0}};
    Soup cube = new Soup().box(x * side, y * side, z * side, (x + 1) * side, (y + 1) * side, (z + 1) * side);
    for (int k = 0; k < 6; k++) {
      if (!isFull(full, x + next[k][0], y + next[k][1], z + next[k][2])) {
        for (int f = 2 * k; f < 2 * k + 2; f++) {
          soup.facet(cube.corner(f, 0), cube.corner(f, 1), cube.corner(f, 2));
        }
      }
    }
  }

  private static boolean isFull(boolean[][][] full, int x, int y, int z) {
    return x >= 0 && y >= 0 && z >= 0 && x < full.length && y < full[x].length && z < full[x][y].length
        && full[x][y][z];
  }

  /** A plate of cubes with a row of square holes: its genus is the number of holes. */
  public static Soup holedPlate(int holes, int side) {
    boolean[][][] full = new boolean[2 * holes + 1][3][1];
    for (int x = 0; x < full.length; x++) {
      for (int y = 0; y < 3; y++) {
        full[x][y][0] = y != 1 || x % 2 == 0;
      }
    }
    return cubes(full, side);
  }
}
