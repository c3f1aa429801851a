/**
 * The proof that a mesh is sound, and what it measures.
 *
 * <p>{@link outrigger.shapes.check.Proof} judges a {@link outrigger.shapes.mesh.Mesh} and alone makes a
 * {@link outrigger.shapes.check.CheckedMesh}, without which nothing is written. It shares only the exact predicates with
 * the kernel that made the mesh, never repairs, and decides nothing by a tolerance.
 *
 * <p><b>The quick way</b> decides whether there is any fault, and is all a sound mesh goes through:
 * <ol>
 *   <li>each facet has an area;
 *   <li>{@code HalfEdges}: each edge joins two facets that run it opposite ways, and a walk round each vertex comes by all
 *       its facets. That leaves no facet there twice but two that face each other, which are a fold;
 *   <li>{@code Flatness}: facets in one plane are gathered into flat patches. Neighbours folded onto each other show here;
 *       neighbours in two planes meet in their edge alone, and need no further test;
 *   <li>{@code Facing}, {@code Outline}, {@code Loops}: facets that face one axis direction are gathered into regions. The rim of a region,
 *       seen along that axis, shows that none of its facets meet. So all pairs within a region are decided by its rim;
 *   <li>{@code Clearance}: patches of different regions, where a tree of boxes says that they may meet, are tested by their
 *       corners: one that stands on another's plane with common corners only is clear of it. Few are left for the exact
 *       test facet by facet. Regions whose outline shows nothing are compared patch by patch in the same way;
 *   <li>{@code Shells}: the sign and depth of each shell by its exact volume and one exact ray.
 * </ol>
 *
 * <p><b>The examination</b> of a mesh with a fault looks for each kind by itself, so as to count all and name places:
 * facets without area; facets there twice; edges, paired by sorting their vertex numbers, with shells and vertex fans
 * gathered on the way; facets that meet, every pair whose boxes overlap. What could not be examined is said. Tests hold
 * both ways to the same answer.
 *
 * <p>Rules broken are named {@code empty}, {@code out-of-range}, {@code zero-area-facet}, {@code duplicate-facet},
 * {@code open-edge}, {@code crowded-edge}, {@code flipped-facet}, {@code pinched-vertex}, {@code facets-meet},
 * {@code inside-out-shell}, {@code nested-shell} and {@code volume-not-positive}.
 *
 * <p>Not promised: walls thick enough to print, or anything else about printing.
 */
package outrigger.shapes.check;
