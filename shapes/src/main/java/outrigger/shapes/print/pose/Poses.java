package outrigger.shapes.print.pose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.print.Normals;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.facet.DirectionSums;
import outrigger.shapes.print.facet.Facets;

/**
 * Directions a part could be laid on: the faces of its convex hull and its own flat faces, larger ones first, and how it
 * stands in the file.
 */
final class Poses {
  /** Most poses tried of each source: own choice. */
  private static final int MOST = 10;
  /** Directions closer than about this are one, as a part of a unit, 0.1 degrees: own choice. */
  private static final double SAME = 0.002;
  /** A direction may lie on the border of four cells. */
  private static final int FULLEST = 4 * MOST;
  /** Bits of a key for each axis, and what is added so that none is negative: 2 / SAME steps fit. */
  private static final int KEY_BITS = 12;
  private static final long KEY_OFFSET = 1 << KEY_BITS - 1;

  private final Map<Long, double[]> found = new HashMap<>();
  private long lastKey = -1;
  private double[] last = new double[3];

  private Poses() {}

  /** Unit vectors that could face the bed; the first is how the part stands. */
  static List<double[]> of(Specimen specimen) {
    Poses poses = new Poses();
    List<double[]> downs = new ArrayList<>(List.of(new double[] {0, 0, -1}));
    Mesh mesh = specimen.mesh();
    for (int[] t : Hull.of(mesh, FarPoints.of(specimen))) {
      poses.add(Normals.doubled(mesh, t[0], t[1], t[2]));
    }
    poses.takeLargest(downs);
    poses.addFlats(specimen.directions(), specimen.facets());
    poses.takeLargest(downs);
    return downs;
  }

  /** Adds the facets of those directions that most area faces: first roughly by cells, then those of the fullest cells. */
  private void addFlats(DirectionSums directions, Facets facets) {
    double[] sorted = new double[directions.count()];
    Arrays.setAll(sorted, directions::area);
    Arrays.sort(sorted);
    double least = sorted.length < FULLEST ? 0 : sorted[sorted.length - FULLEST];
    for (int cell = 0; cell < directions.count(); cell++) {
      if (directions.area(cell) >= least && directions.isWithin(cell, SAME)) {
        add(directions.sum(cell));
      } else if (directions.area(cell) >= least) {
        directions.forEach(cell, f -> {
          double area = facets.area(f);
          add(facets.normal(f, 0) * area, facets.normal(f, 1) * area, facets.normal(f, 2) * area);
        });
      }
    }
  }

  /** Adds up normals of about one direction. */
  private void add(double... n) {
    double length = Normals.length(n);
    long key = 0;
    for (int k = 0; k < 3; k++) {
      key = key << KEY_BITS | Math.round(n[k] / length / SAME) + KEY_OFFSET;
    }
    if (key != lastKey) {
      lastKey = key;
      last = found.computeIfAbsent(key, k -> new double[3]);
    }
    for (int k = 0; k < 3; k++) {
      last[k] += n[k];
    }
  }

  /** Moves the largest directions that are not there yet into a list, and begins anew. */
  private void takeLargest(List<double[]> downs) {
    List<double[]> sums = new ArrayList<>(found.values());
    found.clear();
    lastKey = -1;
    Comparator<double[]> larger = Collections.reverseOrder(Comparator.comparingDouble(Normals::length));
    sums.sort(larger.thenComparingDouble(n -> n[0]).thenComparingDouble(n -> n[1]).thenComparingDouble(n -> n[2]));
    int taken = 0;
    for (int i = 0; i < sums.size() && taken < MOST; i++) {
      double[] n = sums.get(i);
      double length = Normals.length(n);
      double[] down = {n[0] / length, n[1] / length, n[2] / length};
      if (downs.stream().noneMatch(other -> isSame(other, down))) {
        downs.add(down);
        taken++;
      }
    }
  }

  private static boolean isSame(double[] a, double[] b) {
    double x = a[0] - b[0];
    double y = a[1] - b[1];
    double z = a[2] - b[2];
    return x * x + y * y + z * z < SAME * SAME;
  }
}
