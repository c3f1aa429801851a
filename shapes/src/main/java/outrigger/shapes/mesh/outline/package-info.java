/**
 * The edges that bound the result's faces, brought to the fewest that say the same.
 *
 * <p><b>Input.</b> Directed pieces of edges in any order, each with the group of faces that it bounds and the result on its
 * left. <b>Output.</b> An {@link Outline}: by group the edges from bend to bend, each with one of another face that runs
 * back between the same two vertices.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link PointNumbers} gives equal exact points one number; {@link CornerNumbers} spares looking a face's corner up more
 *     than once.
 * <li>A vertex at which a group's outline bends, or is passed more than once, is marked. All vertices that no group marks
 *     are dropped: seams between flush faces left no edges, so what divided these is gone too.
 * <li>{@code EdgeMatcher} pairs the edges. Where some are left over, a corner of one face lies within an edge of its
 *     neighbour: the edge is split there. More than two faces at one edge touch along a line only; that is refused, with
 *     both ends.
 * </ol>
 *
 * <p><b>Sources.</b> None: merging faces by plane and sense is what the numbers of planes were made for.
 */
package outrigger.shapes.mesh.outline;
