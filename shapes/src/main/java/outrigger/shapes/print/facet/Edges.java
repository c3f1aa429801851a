package outrigger.shapes.print.facet;

import outrigger.shapes.mesh.Mesh;

/**
 * Which way a mesh's edges bend.
 *
 * @param inward whether the solid is measured, not the air
 */
public record Edges(Mesh mesh, Facets facets, boolean inward) {
  /**
   * Whether an edge reaches into what is measured.
   *
   * @param half of one facet
   * @param across the half-edge of the other facet
   * @param cosine the edge is flat unless the product of the two normals is less
   */
  public boolean isJutting(int half, int across, double cosine) {
    int facet = half / 3;
    int other = across / 3;
    double product = 0;
    for (int k = 0; k < 3; k++) {
      product += facets.normal(facet, k) * facets.normal(other, k);
    }
    if (!(product < cosine)) {
      return false;
    }
    int tip = mesh.corner(other, (across % 3 + 2) % 3);
    int at = Seams.from(mesh, half);
    double rise = facets.normal(facet, 0) * (mesh.x(tip) - mesh.x(at)) + facets.normal(facet, 1) * (mesh.y(tip) - mesh.y(at))
        + facets.normal(facet, 2) * (mesh.z(tip) - mesh.z(at));
    return inward ? rise > 0 : rise < 0;
  }
}
