package outrigger.shapes.campaign;

import java.util.Arrays;
import java.util.List;
import outrigger.shapes.mesh.Mesh;

/** A mesh's facets whatever their order: equal for the same facets. */
record FacetSet(List<List<Integer>> facets) {

  /** The facets moved by grid steps. */
  static FacetSet of(Mesh mesh, int[] by) {
    int[][] all = new int[mesh.facetCount()][];
    for (int f = 0; f < all.length; f++) {
      int[][] c = new int[3][];
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        c[k] = new int[] {mesh.x(v) + by[0], mesh.y(v) + by[1], mesh.z(v) + by[2]};
      }
      int first = Arrays.compare(c[0], c[1]) < 0 ? Arrays.compare(c[0], c[2]) < 0 ? 0 : 2
          : Arrays.compare(c[1], c[2]) < 0 ? 1 : 2;
      all[f] = new int[9];
      for (int k = 0; k < 3; k++) {
        System.arraycopy(c[(first + k) % 3], 0, all[f], 3 * k, 3);
      }
    }
    Arrays.sort(all, Arrays::compare);
    return new FacetSet(Arrays.stream(all).map(f -> Arrays.stream(f).boxed().toList()).toList());
  }
}
