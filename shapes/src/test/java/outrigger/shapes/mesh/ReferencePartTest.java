package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reference parts against their volumes by hand and their least facet counts. */
class ReferencePartTest {

  /**
   * Volumes: closed forms of the parts on whole micrometres, the last agreed by three independent programs; the grid
   * moves corners by at most 31 nm, which keeps each within 1e-5.
   */
  @ParameterizedTest
  @CsvSource({"spacer, 1421.365478400, 788", "tower, 3008.360511034, 1212", "tray, 6238.928534400, 2684",
      "random-prisms, 33393.980500694, 8026"})
  void mesh_referencePart_hasItsVolumeAndLeastFacets(String name, double volume, int facets) throws Exception {
    Mesh mesh = ReferencePart.named(name).mesh();
    assertEquals(1, volume(mesh) / volume, 1e-5, name);
    assertEquals(facets, mesh.facetCount(), name);
  }

  static double volume(Mesh m) {
    double six = 0;
    for (int f = 0; f < m.facetCount(); f++) {
      double[][] p = new double[3][];
      for (int k = 0; k < 3; k++) {
        int v = m.corner(f, k);
        p[k] = new double[] {m.x(v) / 16384.0, m.y(v) / 16384.0, m.z(v) / 16384.0};
      }
      six += p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1]) - p[0][1] * (p[1][0] * p[2][2] - p[1][2] * p[2][0])
          + p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
    }
    return six / 6;
  }
}
