/**
 * The planar way: expressions whose operands all stand along one axis with straight walls, without a third dimension.
 *
 * <p><b>Input.</b> A solid. <b>Output.</b> The mesh that the spatial way makes of it, facet by facet; or nothing, where an
 * operand is of another kind, where the result touches itself, or where it is to be refused: the spatial way does that.
 *
 * <p><b>Steps</b> of {@link PlanarWay}.
 * <ol>
 * <li>{@code Uprights} gathers the operands; a single one of another kind, or along another axis, ends it.
 * <li>{@code Rims} makes one {@code Rim} of equal rings of all operands, and finds out which go round which and whether any
 *     meet.
 * <li>The result over a place is a <i>column</i>, the heights at which it begins and ends there. {@code Columns} keeps it
 *     while rims are stepped over. Where the columns at the two sides of an edge differ there is a wall
 *     ({@code ColumnWalls}); where one begins or ends and the other does not, a cap.
 * <li>If no rims meet, {@code LooseRims} writes down walls as rectangles along whole rims, and {@code CapTriangulator} cuts
 *     the caps between them, those with the same rims once.
 * <li>If some do, {@code PlanarSheet} lays all rims into one constrained triangulation and gives each cell its column.
 *     {@code PlanarOutline} writes walls and caps into an outline, and the last steps of the spatial way follow.
 * </ol>
 *
 * <p><b>Sources.</b> None known. A column is the interval list of a ray along the axis, as in Roth, <i>Ray casting for
 * modeling solids</i>, Computer Graphics and Image Processing 18 (1982).
 */
package outrigger.shapes.mesh.planar;
