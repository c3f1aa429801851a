/**
 * What an operand looks like before anything is done with it.
 *
 * <p><b>Input.</b> A leaf of a solid: a prism, a revolution, or proven facets. <b>Output.</b> A {@link Polyhedron}: closed,
 * its corners on the grid, each face exactly flat. For the planar way a straight prism is an {@link Upright} instead: the
 * rings of its outline and two heights.
 *
 * <p>A leaf whose profile touches itself is taken apart before, by {@link TouchingOutlines}. {@link SamePlace} finds
 * polyhedra that have the same faces in the same place.
 *
 * <p><b>Steps</b> of {@link LeafBuilder}.
 * <ol>
 * <li>{@code PrismBuilder} cuts a prism into sections, at the heights where a draft or a rim bends its walls. {@code Inset}
 *     moves the outline in at each: every corner along its mitre, so that corners keep their numbers and walls can be drawn
 *     from one section to the next. Where that would make edges turn round or meet, it is refused.
 * <li>{@code RevolutionBuilder} makes a circle of each corner of the half section and a strip of walls of each edge.
 * <li>{@code FacetedBuilder} pairs the edges of facets, walks from facet to facet as long as they lie in one plane, and
 *     makes one face of each such patch.
 * <li>{@code PolyhedronBuilder} numbers corners, equal ones of a ring alike; a piece of wall that rounding has bent becomes
 *     two facets.
 * <li>A placement that keeps the grid is applied to the corners; what comes to lie beyond the grid is refused.
 * </ol>
 *
 * <p><b>Sources.</b> None: this follows from what {@code solid} says of each leaf. How far chords of circles lie off them is
 * for {@code profile} to say.
 */
package outrigger.shapes.mesh.leaf;
