/**
 * The spatial way: an expression evaluated over any operands, from faces to facets on the grid.
 *
 * <p><b>Input.</b> Faces and the expression over their operands; or a soup, of which all is wanted that it winds round.
 * <b>Output.</b> {@link outrigger.shapes.mesh.frame.Rounded} facets, which bound the result exactly but for corners that
 * were rounded: these may have made facets meet, which is for {@code settle} to find.
 *
 * <p><b>Steps</b> of {@link Kernel}, for operands ({@code evaluate}).
 * <ol>
 * <li>{@code meet}: all pairs of faces whose boxes overlap meet each other.
 * <li>{@code wire}: faces without contact are outlined along their rims and stretches.
 * <li>{@code sheet}: planes of faces with contact are cut into cells, and cells that bound the result outlined.
 * <li>{@code outline}: what was gathered is brought to its fewest edges, and these are paired.
 * <li>{@code triangulation}: each face is cut into facets. Only then are corners off the grid rounded to it.
 * </ol>
 *
 * <p><b>Steps</b> for a soup ({@code resolve}).
 * <ol>
 * <li>{@code TouchedFacets} compares the facets that may meet others with all that are near. Those that do need sheets, and
 *     so do those at edges that not just two facets share, and, by {@code Coplanar}, all that lie in one plane with any of
 *     these.
 * <li>{@code Untouched} are all other facets. One look tells for all of them that hang together whether they bound what is
 *     wound round. Those that do stay as they are; where they border on what is outlined, their edges are pinned there.
 * <li>The touched ones go on as above, from sheets to rounded corners.
 * </ol>
 *
 * <p><b>Sources.</b> Zhou, Grinspun, Zorin, Jacobson, <i>Mesh arrangements for solid geometry</i>, ACM TOG 35 (2016), for
 * evaluating an expression whole; the plane as the unit of work is this package's own, see {@code docs/kernel.md}.
 */
package outrigger.shapes.mesh.spatial;
