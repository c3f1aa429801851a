/**
 * The faces of all operands, and numbers for all that they have in common.
 *
 * <p><b>Input.</b> Polyhedra, or a soup of facets that may cross and overlap. <b>Output.</b> {@link Faces}: faces, planes,
 * corners and half-edges, all known by number. Faces in one plane, of whatever operand, have the number of that plane, and
 * those that look the same way one {@link Group}: so flush faces need no comparing, and no seam is left between them.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code FlatFaces} joins triangles that lie in one plane with their neighbours; {@code FlatOperand} counts what is
 *     left.
 * <li>{@code SolidFaces} makes the {@link Face}s in blocks, several threads at once, and works out their planes;
 *     {@code PlaneNumbers} numbers these in the order of the faces.
 * <li>{@link HalfEdges} holds each edge once for either face at it; {@code Twins} finds which two belong together, looking
 *     among the edges at one corner only.
 * <li>{@link EdgeBlocks} puts the edges of a face of many edges into a tree of boxes, so that whole blocks on one side of a
 *     plane are passed over. It is made when first asked for.
 * <li>Of a soup nothing is made but corners and edges; a facet's plane is worked out when it is asked for.
 * </ol>
 *
 * <p><b>Sources.</b> Half-edges as in Guibas and Stolfi, <i>Primitives for the manipulation of general subdivisions and the
 * computation of Voronoi diagrams</i>, ACM TOG 4 (1985), less what surfaces with two sides can do without.
 */
package outrigger.shapes.mesh.face;
