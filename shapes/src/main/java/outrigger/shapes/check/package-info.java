/**
 * The proof that a mesh is sound, and what it measures.
 *
 * <p>{@link outrigger.shapes.check.Proof} judges a {@link outrigger.shapes.mesh.Mesh} and alone makes a
 * {@link outrigger.shapes.check.CheckedMesh}, without which nothing is written. It shares only the exact predicates with
 * the kernel that made the mesh, never repairs, and decides nothing by a tolerance.
 *
 * <p>Steps, cheapest first: facets without area; facets there twice; edges, paired by sorting their vertex numbers, with
 * shells and vertex fans gathered on the way; facets that meet, found by a tree of boxes and an exact test; last, for a
 * surface without fault so far, the sign and depth of each shell by its exact volume and one exact ray. What could not be
 * examined is said.
 *
 * <p>Rules broken are named {@code empty}, {@code out-of-range}, {@code zero-area-facet}, {@code duplicate-facet},
 * {@code open-edge}, {@code crowded-edge}, {@code flipped-facet}, {@code pinched-vertex}, {@code facets-meet},
 * {@code inside-out-shell}, {@code nested-shell} and {@code volume-not-positive}.
 *
 * <p>Not promised: walls thick enough to print, or anything else about printing.
 */
package outrigger.shapes.check;
