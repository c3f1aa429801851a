/**
 * Brings rounded facets to rest, so that they meet in common corners and edges only.
 *
 * <p><b>Input.</b> Rounded facets, and someone who may know a mesh to be sound. <b>Output.</b> A
 * {@link outrigger.shapes.mesh.Mesh} in the axes given, in which facets meet only so, unless they did otherwise before they
 * were rounded.
 *
 * <p><b>Steps</b> of {@link Settler}.
 * <ol>
 * <li>Equal corners are welded, and facets that lost their area go. If the mesh is known to be sound, that was all.
 * <li>{@code Faults} compares the facets at rounded corners with all near them. If none meet, that was all. What else is
 *     asked of facets is in {@code GridFacets}.
 * <li>If some do, the facets are resolved as a soup ({@code spatial.Kernel}) and rounded again, some times at most.
 * <li>From the third pass on {@code Nudger} first puts corners of facets that meet on grid points close by, always by the
 *     move that mends most; {@code Moves} are those that there are.
 * <li>Where rounding made the surface touch itself, {@code Fans} tells which facets hang together at a vertex,
 *     {@code Parting} gives each fan a vertex of its own and puts them a grid step apart, if need be after splitting an edge
 *     there ({@code EdgeSplit}). What touched before it was rounded ({@code ExactTouch}) is not parted but refused, here or
 *     by the proof.
 * <li>{@code Slivers} leaves out closed pieces thinner than the grid.
 * <li>What does not come to rest ends in an {@link outrigger.shapes.mesh.frame.UnsettledException} with a place.
 * </ol>
 *
 * <p>What to do with facets that meet is the attempt's remedy. All the above is to cut them anew. To spread them is another
 * way altogether: {@code Spreading} takes the facets as they were before they were rounded and puts corners of those that
 * would meet clear of each other. {@code NearPairs} are the vertices and facets, edges and edges there, {@code Approach}
 * measures them, {@code Relaxation} moves the corners. The last remedy cuts anew too, but {@code ThinFacets} first takes
 * away what is thin of the facets that meet, on the {@code Stars} of their vertices: needles shrink, caps have their long
 * edge turned.
 *
 * <p><b>Sources.</b> Lazard and Valque, <i>Removing self-intersections in 3D meshes while preserving floating-point
 * coordinates</i> (2025), for rounding, cutting anew and rounding again until that ends. M&uuml;ller, Heidelberger, Hennix
 * and Ratcliff, <i>Position based dynamics</i> (2007), for moving points by the mean of what pairs of vertices and facets,
 * edges and edges ask for; Li and others, <i>Incremental potential contact</i> (2020), for steps shorter than what is
 * between; both from memory. Botsch and Kobbelt, <i>A robust procedure to eliminate degenerate faces from triangle
 * meshes</i> (2001), for needles and caps; Dey, Edelsbrunner, Guha and Nekhayev, <i>Topology preserving edge contraction</i>
 * (1999), for when an edge may shrink. Nudging, parting and spreading before rounding are this package's own.
 */
package outrigger.shapes.mesh.settle;
