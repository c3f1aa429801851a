package outrigger.shapes.print.facet;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.Normals;

/** Unit normals and areas of a mesh's facets. */
public final class Facets {
  private final float[] normals;
  private final float[] areas;

  /** Those of a mesh, worked out in linear time. */
  public Facets(Mesh mesh) {
    areas = new float[mesh.facetCount()];
    normals = new float[3 * areas.length];
    for (int f = 0; f < areas.length; f++) {
      double[] n = Normals.doubled(mesh, f);
      double length = Normals.length(n);
      areas[f] = (float) (length / 2 * Grid.STEP * Grid.STEP);
      for (int k = 0; k < 3; k++) {
        normals[3 * f + k] = (float) (n[k] / length);
      }
    }
  }

  /** How many facets there are. */
  public int count() {
    return areas.length;
  }

  /** Component 0, 1 or 2 of a facet's outward unit normal. */
  public double normal(int facet, int axis) {
    return normals[3 * facet + axis];
  }

  /** mm^2. */
  public double area(int facet) {
    return areas[facet];
  }
}
