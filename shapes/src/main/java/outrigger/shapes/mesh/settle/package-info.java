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
 * <li>{@code Faults} compares the facets at rounded corners with all near them. If none meet, that was all.
 * <li>If some do, the facets are resolved as a soup ({@code spatial.Kernel}) and rounded again, some times at most.
 * <li>From the third pass on {@code Nudger} first puts corners of facets that meet on grid points close by, always by the
 *     move that mends most.
 * <li>Where rounding made the surface touch itself, {@code Fans} tells which facets hang together at a vertex,
 *     {@code Parting} gives each fan a vertex of its own and puts them a grid step apart, if need be after splitting an edge
 *     there ({@code EdgeSplit}). What touched before it was rounded ({@code ExactTouch}) is not parted but refused, here or
 *     by the proof.
 * <li>{@code Slivers} leaves out closed pieces thinner than the grid.
 * <li>What does not come to rest ends in an {@link outrigger.shapes.mesh.frame.UnsettledException} with a place, and may do
 *     so in another attempt.
 * </ol>
 *
 * <p><b>Sources.</b> Lazard and Valque, <i>Removing self-intersections in 3D meshes while preserving floating-point
 * coordinates</i> (2025), for rounding, cutting anew and rounding again until that ends; nudging and parting are this
 * package's own.
 */
package outrigger.shapes.mesh.settle;
