/**
 * Brings rounded facets to rest, so that they meet in common corners and edges only.
 *
 * <p><b>Input.</b> Rounded facets, where their vertices were before, and someone who may know a mesh to be sound.
 * <b>Output.</b> A {@link outrigger.shapes.mesh.Mesh} in the axes given, in which facets meet only so, unless they did
 * otherwise before they were rounded.
 *
 * <p><b>Steps</b> of {@link Settler}.
 * <ol>
 * <li>Equal corners are welded, and facets that lost their area so go. If the mesh is known to be sound, that was all.
 * <li>{@code Faults} compares the facets at rounded corners with all near them; where corners fell together, {@code Fans}
 *     tells whether facets at a vertex still hang together. If nothing is wrong, that was all.
 * <li>If some meet, the facets are resolved as a soup ({@code spatial.Kernel}) and rounded again, twice at most.
 * <li>What does not come to rest so: {@code Slivers} leaves out closed pieces thinner than the grid, and {@code Spreading}
 *     takes the others as they were before they were first rounded and puts corners of facets that would meet clear of each
 *     other. {@code NearPairs} are the vertices and facets, edges and edges there; {@code Approach} measures them, {@code
 *     ExactApproach} those that are too near for doubles; {@code Relaxation} moves the corners, and {@code Places} knows
 *     where they are.
 * <li>What touched before it was rounded is refused ({@link outrigger.shapes.mesh.frame.TouchException}), and so is what
 *     stays too near after so many rounds or goes too far ({@link UnsettledException}).
 * </ol>
 *
 * <p>What is asked of single facets is in {@code GridFacets}, of those at a vertex in {@code FacetsAt}.
 *
 * <p><b>Sources.</b> Lazard and Valque, <i>Removing self-intersections in 3D meshes while preserving floating-point
 * coordinates</i> (2025), for rounding, cutting anew and rounding again. M&uuml;ller, Heidelberger, Hennix and Ratcliff,
 * <i>Position based dynamics</i> (2007), for moving points by the mean of what pairs of vertices and facets, edges and edges
 * ask for; Li and others, <i>Incremental potential contact</i> (2020), for steps shorter than what is between; both from
 * memory. To spread before rounding is this package's own.
 */
package outrigger.shapes.mesh.settle;
