/**
 * Triangles of points of one plane, Delaunay as far as edges that must stay let them.
 *
 * <p><b>Input.</b> Exact points and segments between them, or the outlines of faces. <b>Output.</b> A {@link Triangulation}
 * in which every segment is a row of marked edges, or the facets of all faces with no vertex added.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>One huge triangle lies round everything. A point is looked for by walking from the triangle last found; it splits that
 *     triangle or an edge, and edges across from it are flipped until they are Delaunay. Turns are exact; the circle test
 *     takes points rounded to the grid, which only shapes the triangles ({@code PlanarPoints}).
 * <li>{@link ConstrainedTriangulation} lays a segment by flipping the edges in its way. Where it crosses a marked edge the
 *     exact point of crossing becomes a vertex; where it runs along one, the edge carries both.
 * <li>{@link FaceTriangulator} cuts the faces of one group after the other. {@link FaceSweep} goes over their corners from
 *     left to right ({@code SweepOrder}) and makes triangles of what lies inside alone, out of {@code Funnels}; then edges
 *     are flipped until they are Delaunay. Only where loops touch at a corner are they laid into a
 *     {@code ConstrainedTriangulation}, of which what an odd number of marked edges parts from the outside is kept. Corners
 *     on the grid have one Delaunay triangulation whatever order they come in, ties included; with rounded ones the order
 *     counts, but the sweep's order is one by place, and {@code LoopOrder} gives one to the rest.
 * </ol>
 *
 * <p><b>Sources.</b> Garey, Johnson, Preparata and Tarjan, <i>Triangulating a simple polygon</i>, Information Processing
 * Letters 7 (1978), for the sweep; Lawson, <i>Software for C1 surface interpolation</i>, in Mathematical Software III
 * (1977), for inserting points by flips; Sloan, <i>A fast algorithm for generating constrained Delaunay triangulations</i>,
 * Computers and Structures 47 (1993), for freeing a segment's way by flips; Guibas and Stolfi, <i>Primitives for the
 * manipulation of general subdivisions and the computation of Voronoi diagrams</i>, ACM TOG 4 (1985), for walking to a
 * point.
 */
package outrigger.shapes.mesh.triangulation;
