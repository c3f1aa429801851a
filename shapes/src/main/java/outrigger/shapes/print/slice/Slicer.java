package outrigger.shapes.print.slice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.facet.Seams;

/**
 * Cuts a proven mesh by level planes.
 *
 * <p>A plane is laid a half grid step off the grid, so that no corner of the mesh lies in it and every facet is either
 * crossed or not: there are no special cases and no tolerance. The outline is walked from facet to facet over their
 * common edges; it closes because the mesh is sound. Building costs linear time in facets, a slice linear time in the
 * facets it crosses.
 */
public final class Slicer {
  private final Mesh mesh;
  private final Seams seams;
  private final int[] lows;
  private final int[] highs;

  private Slicer(Mesh mesh) {
    this.mesh = mesh;
    seams = Seams.of(mesh);
    lows = new int[mesh.facetCount()];
    highs = new int[mesh.facetCount()];
    for (int f = 0; f < lows.length; f++) {
      int a = mesh.z(mesh.corner(f, 0));
      int b = mesh.z(mesh.corner(f, 1));
      int c = mesh.z(mesh.corner(f, 2));
      lows[f] = Math.min(a, Math.min(b, c));
      highs[f] = Math.max(a, Math.max(b, c));
    }
  }

  /** A slicer for a sound mesh. */
  public static Slicer of(Mesh mesh) {
    return new Slicer(mesh);
  }

  /** Which facet lies across each edge. */
  public Seams seams() {
    return seams;
  }

  /** The slice at a height, mm; without outlines above and below the solid. */
  public Slice at(double z) {
    return crossings(new double[] {z}).slice(0, new int[mesh.facetCount()]);
  }

  /**
   * The slices at several heights, lowest first.
   *
   * @param heights mm, rising
   * @param workers who slices; the result does not depend on it
   */
  public List<Slice> at(List<Double> heights, Workers workers) {
    double[] z = heights.stream().mapToDouble(height -> height).toArray();
    return Blocks.each(workers, z.length, (from, to) -> {
      Crossings crossings = crossings(Arrays.copyOfRange(z, from, to));
      int[] seen = new int[mesh.facetCount()];
      List<Slice> slices = new ArrayList<>();
      for (int i = 0; i < to - from; i++) {
        slices.add(crossings.slice(i, seen));
      }
      return slices;
    });
  }

  /** Planes a half step off the grid and the facets each of them crosses. */
  public Crossings crossings(double[] heights) {
    return new Crossings(heights);
  }

  /** A height in grid units, moved off the grid by half a step. */
  static double plane(double z) {
    return Math.floor(z * Grid.PER_MM) + 0.5;
  }

  /** Some planes with the facets they cross. May be read by several threads. */
  public final class Crossings {
    private final double[] planes;
    private final int[] start;
    private final int[] facets;

    private Crossings(double[] heights) {
      planes = Arrays.stream(heights).map(Slicer::plane).toArray();
      start = new int[planes.length + 1];
      int[] crossed = crossed();
      for (int f : crossed) {
        for (int i = firstAbove(f); i < planes.length && planes[i] < highs[f]; i++) {
          start[i + 1]++;
        }
      }
      for (int i = 0; i < planes.length; i++) {
        start[i + 1] += start[i];
      }
      facets = new int[start[planes.length]];
      int[] fill = Arrays.copyOf(start, planes.length);
      for (int f : crossed) {
        for (int i = firstAbove(f); i < planes.length && planes[i] < highs[f]; i++) {
          facets[fill[i]++] = f;
        }
      }
    }

    /** The facets between the lowest and the highest plane. */
    private int[] crossed() {
      int[] crossed = new int[planes.length == 0 ? 0 : lows.length];
      double lowest = planes.length == 0 ? 0 : planes[0];
      double highest = planes.length == 0 ? 0 : planes[planes.length - 1];
      int count = 0;
      for (int f = 0; f < crossed.length; f++) {
        if (lows[f] < highest && highs[f] > lowest) {
          crossed[count++] = f;
        }
      }
      return Arrays.copyOf(crossed, count);
    }

    /** The first plane above a facet's lowest corner. */
    private int firstAbove(int f) {
      return -1 - Arrays.binarySearch(planes, lows[f]);
    }

    /**
     * The slice of a plane.
     *
     * @param seen one mark a facet, zero at first; kept by the caller for all its slices of these crossings
     */
    public Slice slice(int plane, int[] seen) {
      int mark = plane + 1;
      List<double[]> loops = new ArrayList<>();
      for (int i = start[plane]; i < start[plane + 1]; i++) {
        if (seen[facets[i]] != mark) {
          loops.add(walk(facets[i], planes[plane], seen, mark));
        }
      }
      return new Slice(planes[plane] * Grid.STEP, loops);
    }
  }

  /** Once round, leaving each facet over the edge that runs upward: then the solid lies on the left. */
  private double[] walk(int first, double z, int[] seen, int mark) {
    double[] xy = new double[32];
    int n = 0;
    int f = first;
    do {
      seen[f] = mark;
      int half = rising(f, z);
      if (n == xy.length) {
        xy = Arrays.copyOf(xy, 2 * n);
      }
      int a = Seams.from(mesh, half);
      int b = Seams.to(mesh, half);
      double share = (z - mesh.z(a)) / (mesh.z(b) - mesh.z(a));
      xy[n++] = (mesh.x(a) + share * (mesh.x(b) - mesh.x(a))) * Grid.STEP;
      xy[n++] = (mesh.y(a) + share * (mesh.y(b) - mesh.y(a))) * Grid.STEP;
      f = seams.across(half) / 3;
    } while (f != first);
    return Arrays.copyOf(xy, n);
  }

  private int rising(int f, double z) {
    for (int h = 3 * f; h < 3 * f + 2; h++) {
      if (mesh.z(Seams.from(mesh, h)) < z && mesh.z(Seams.to(mesh, h)) > z) {
        return h;
      }
    }
    return 3 * f + 2;
  }
}
