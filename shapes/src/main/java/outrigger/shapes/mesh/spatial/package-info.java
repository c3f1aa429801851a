/**
 * The spatial way: an expression evaluated over any operands, from faces to facets on the grid.
 *
 * <p><b>Input.</b> Faces and the expression over their operands. <b>Output.</b> {@link
 * outrigger.shapes.mesh.frame.Rounded} facets, which bound the result exactly but for corners that were rounded: these may
 * have made facets meet, which is for {@code settle} to find.
 *
 * <p><b>Steps</b> of {@link Kernel}.
 * <ol>
 * <li>{@code meet}: all pairs of faces whose boxes overlap meet each other.
 * <li>{@code wire}: faces without contact are outlined along their rims and stretches.
 * <li>{@code sheet}: planes of faces with contact are cut into cells, and cells that bound the result outlined.
 * <li>{@code outline}: what was gathered is brought to its fewest edges, and these are paired.
 * <li>{@code triangulation}: each face is cut into facets. Only then are corners off the grid rounded to it.
 * </ol>
 *
 * <p><b>Sources.</b> Zhou, Grinspun, Zorin, Jacobson, <i>Mesh arrangements for solid geometry</i>, ACM TOG 35 (2016), for
 * evaluating an expression whole; the plane as the unit of work is this package's own, see {@code docs/kernel.md}.
 */
package outrigger.shapes.mesh.spatial;
