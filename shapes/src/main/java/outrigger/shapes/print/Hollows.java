package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.facet.Seams;

/** The closed hollows of a part: shells that enclose air, out of which no support can be taken. */
public final class Hollows {
  private static final int AXES = 3;

  private final List<double[]> boxes = new ArrayList<>();

  /** Those of a part, found shell by shell in linear time, if it has any. */
  static Hollows of(Specimen specimen) {
    Hollows hollows = new Hollows();
    if (specimen.measures().shells() > specimen.measures().pieces()) {
      hollows.seek(specimen.mesh(), specimen.seams());
    }
    return hollows;
  }

  private Hollows() {}

  private void seek(Mesh mesh, Seams seams) {
    boolean[] seen = new boolean[mesh.facetCount()];
    int[] stack = new int[mesh.facetCount()];
    for (int f = 0; f < seen.length; f++) {
      if (!seen[f]) {
        add(mesh, seams, f, seen, stack);
      }
    }
  }

  private void add(Mesh mesh, Seams seams, int first, boolean[] seen, int... stack) {
    double[] box = new double[2 * AXES];
    Arrays.fill(box, 0, AXES, Double.POSITIVE_INFINITY);
    Arrays.fill(box, AXES, 2 * AXES, Double.NEGATIVE_INFINITY);
    double volume = 0;
    int[] origin = {mesh.x(mesh.corner(first, 0)), mesh.y(mesh.corner(first, 0)), mesh.z(mesh.corner(first, 0))};
    int top = 0;
    stack[top++] = first;
    seen[first] = true;
    while (top > 0) {
      int f = stack[--top];
      volume += cone(mesh, f, origin);
      for (int k = 0; k < AXES; k++) {
        widen(box, mesh, mesh.corner(f, k));
        int across = seams.across(AXES * f + k) / AXES;
        if (!seen[across]) {
          seen[across] = true;
          stack[top++] = across;
        }
      }
    }
    if (volume < 0) {
      boxes.add(box);
    }
  }

  /** Six times the volume between a facet and a place. */
  private static double cone(Mesh mesh, int f, int... origin) {
    double[] n = Normals.doubled(mesh, f);
    int v = mesh.corner(f, 0);
    return n[0] * (mesh.x(v) - origin[0]) + n[1] * (mesh.y(v) - origin[1]) + n[2] * (mesh.z(v) - origin[2]);
  }

  private static void widen(double[] box, Mesh mesh, int v) {
    double[] p = {Grid.toMm(mesh.x(v)), Grid.toMm(mesh.y(v)), Grid.toMm(mesh.z(v))};
    for (int k = 0; k < AXES; k++) {
      box[k] = Math.min(box[k], p[k]);
      box[AXES + k] = Math.max(box[AXES + k], p[k]);
    }
  }

  /** Whether an underside lies in a hollow: in the box round one, whatever lies there being in it or a part of its wall. */
  public boolean holds(double... box) {
    return boxes.stream().anyMatch(hollow -> {
      boolean inside = true;
      for (int k = 0; k < AXES; k++) {
        inside &= box[k] >= hollow[k] - Grid.STEP && box[AXES + k] <= hollow[AXES + k] + Grid.STEP;
      }
      return inside;
    });
  }
}
