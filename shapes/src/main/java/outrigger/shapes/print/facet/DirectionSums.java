package outrigger.shapes.print.facet;

import java.util.Arrays;
import java.util.function.IntConsumer;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/**
 * The facets of a mesh in cells by the way they face, with sums over each cell: what lies below all facets that face a way
 * costs no look at each of them. Built once in linear time; may be read by several threads.
 */
public final class DirectionSums {
  /** 13,824 cells about 2 degrees wide: own choice, no sum depends on it but by rounding. */
  private static final CubeMap CELLS = new CubeMap(48);
  private static final int AXES = 3;
  private static final int SQUARE = AXES * AXES;

  private final Mesh mesh;
  private final Facets facets;
  private final int[] start;
  private final int[] order;
  private final double[] areas;
  private final float[] least;
  private final float[] most;
  private final double[] normals;
  private final double[] moments;

  /** Those of a mesh with its normals. */
  public DirectionSums(Mesh mesh, Facets facets) {
    this.mesh = mesh;
    this.facets = facets;
    int[] cellOf = new int[facets.count()];
    int[] sizes = new int[CELLS.cells()];
    for (int f = 0; f < cellOf.length; f++) {
      cellOf[f] = CELLS.cell(facets.normal(f, 0), facets.normal(f, 1), facets.normal(f, 2));
      sizes[cellOf[f]]++;
    }
    int[] numbers = new int[sizes.length];
    int[] ends = new int[sizes.length + 1];
    int count = 0;
    for (int cell = 0; cell < sizes.length; cell++) {
      numbers[cell] = count;
      if (sizes[cell] > 0) {
        ends[count + 1] = ends[count] + sizes[cell];
        count++;
      }
    }
    start = Arrays.copyOf(ends, count + 1);
    order = new int[cellOf.length];
    areas = new double[count];
    least = new float[AXES * count];
    most = new float[AXES * count];
    normals = new double[AXES * count];
    moments = new double[SQUARE * count];
    Arrays.fill(least, Float.POSITIVE_INFINITY);
    Arrays.fill(most, Float.NEGATIVE_INFINITY);
    int[] next = Arrays.copyOf(start, count);
    for (int f = 0; f < cellOf.length; f++) {
      int cell = numbers[cellOf[f]];
      order[next[cell]++] = f;
      add(cell, f);
    }
  }

  private void add(int cell, int f) {
    int a = mesh.corner(f, 0);
    int b = mesh.corner(f, 1);
    int c = mesh.corner(f, 2);
    double third = Grid.STEP / AXES;
    double x = ((double) mesh.x(a) + mesh.x(b) + mesh.x(c)) * third;
    double y = ((double) mesh.y(a) + mesh.y(b) + mesh.y(c)) * third;
    double z = ((double) mesh.z(a) + mesh.z(b) + mesh.z(c)) * third;
    double area = facets.area(f);
    areas[cell] += area;
    for (int k = 0; k < AXES; k++) {
      double n = facets.normal(f, k);
      int at = AXES * cell + k;
      least[at] = Extremes.less(least[at], (float) n);
      most[at] = Extremes.greater(most[at], (float) n);
      normals[at] += area * n;
      moments[AXES * at] += area * n * x;
      moments[AXES * at + 1] += area * n * y;
      moments[AXES * at + 2] += area * n * z;
    }
  }

  /** How many cells hold facets. */
  public int count() {
    return areas.length;
  }

  /** Area of a cell's facets, mm^2. */
  public double area(int cell) {
    return areas[cell];
  }

  /** The sum of a cell's normals, each as long as its facet's area, mm^2. */
  public double[] sum(int cell) {
    return Arrays.copyOfRange(normals, AXES * cell, AXES * (cell + 1));
  }

  /** Whether no part of a cell's unit normals differs by more. */
  public boolean isWithin(int cell, double difference) {
    boolean within = true;
    for (int k = AXES * cell; k < AXES * (cell + 1); k++) {
      within &= most[k] - least[k] <= difference;
    }
    return within;
  }

  /** Gives each facet of a cell, rising. */
  public void forEach(int cell, IntConsumer consumer) {
    for (int i = start[cell]; i < start[cell + 1]; i++) {
      consumer.accept(order[i]);
    }
  }

  /**
   * Volume between facets and a plane that they face, mm^3.
   *
   * @param down unit vector, the plane's normal away from the part
   * @param level the plane's place along it, mm
   * @param steep facets whose normals' product with {@code down} is no greater are left out
   */
  public double below(double[] down, double level, double steep) {
    double sum = 0;
    double x = down[0];
    double y = down[1];
    double z = down[2];
    float[] lowX = x < 0 ? most : least;
    float[] lowY = y < 0 ? most : least;
    float[] lowZ = z < 0 ? most : least;
    float[] highX = x < 0 ? least : most;
    float[] highY = y < 0 ? least : most;
    float[] highZ = z < 0 ? least : most;
    for (int cell = 0, at = 0; cell < areas.length; cell++, at += AXES) {
      double low = x * lowX[at] + y * lowY[at + 1] + z * lowZ[at + 2];
      double high = x * highX[at] + y * highY[at + 1] + z * highZ[at + 2];
      if (low > steep) {
        sum += whole(cell, down, level);
      } else if (high > steep) {
        sum += parts(cell, down, level, steep);
      }
    }
    return sum;
  }

  private double whole(int cell, double[] down, double level) {
    double sum = 0;
    for (int k = 0; k < AXES; k++) {
      int at = AXES * cell + k;
      sum += down[k] * (level * normals[at] - down[0] * moments[AXES * at] - down[1] * moments[AXES * at + 1]
          - down[2] * moments[AXES * at + 2]);
    }
    return sum;
  }

  private double parts(int cell, double[] down, double level, double steep) {
    double sum = 0;
    for (int i = start[cell]; i < start[cell + 1]; i++) {
      double facing = facing(order[i], down);
      sum += facing > steep ? facing * facets.area(order[i]) * (level - along(order[i], down)) : 0;
    }
    return sum;
  }

  private double facing(int f, double[] down) {
    return facets.normal(f, 0) * down[0] + facets.normal(f, 1) * down[1] + facets.normal(f, 2) * down[2];
  }

  /** The product of the middle of a facet's corners and a vector, mm. */
  private double along(int f, double[] down) {
    double sum = 0;
    for (int k = 0; k < AXES; k++) {
      int v = mesh.corner(f, k);
      sum += mesh.x(v) * down[0] + mesh.y(v) * down[1] + mesh.z(v) * down[2];
    }
    return sum * Grid.STEP / AXES;
  }
}
