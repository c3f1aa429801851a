/**
 * The proof that a mesh is sound, and what it measures.
 *
 * <p>{@link outrigger.shapes.check.Proof} judges a {@link outrigger.shapes.mesh.Mesh} and alone makes a
 * {@link outrigger.shapes.check.CheckedMesh}, without which nothing is written. It shares only the exact predicates with
 * the kernel that made the mesh, never repairs, and decides nothing by a tolerance.
 *
 * <p><b>The quick way</b> ({@code QuickProof}) decides whether there is any fault, and is all a sound mesh goes through.
 * Each step relies on those before it; together they leave no pair of facets undecided.
 * <ol>
 *   <li>Each facet has an area ({@code Surface}).
 *   <li>Each edge joins two facets that run it opposite ways, and a walk round each vertex comes by all its facets
 *       ({@code HalfEdges}). A facet there twice could now only be two that face each other, which steps 3 and 4 find.
 *   <li><i>Plates.</i> Where all corners lie in two planes across an axis, two caps simple by their rims with walls over the
 *       same edges leave nothing to be compared ({@code Plate}), and what follows up to the last step is left out.
 *   <li><i>Facets with a common edge.</i> In two planes they meet in that edge alone. In one plane they lie side by side,
 *       and are gathered into a flat patch, or are folded onto each other ({@code Flatness}).
 *   <li><i>Facets of one region.</i> Facets with an axis direction that all of them face are gathered into regions
 *       ({@code Facing}). Seen along it they all turn the same way, so the number of facets over a point is the number of
 *       times the region's rim winds round it. Where the rim is of loops that do not meet, one alone running the facets'
 *       way, that number is 0 or 1 everywhere, and no facets meet ({@code Outline}, {@code Loops}). A round part is two
 *       regions, a plate's face with a thousand holes is one, and none of the pairs within is ever looked at. A region
 *       for which this fails may be sound all the same; its patches are then shown one by one, and compared like others.
 *   <li><i>Patches of different regions.</i> A tree of boxes finds those that may meet ({@code Clearance}). Whole regions
 *       one on each side of a plane across an axis are decided by what they have in that plane ({@code Layers}, and for two
 *       patches {@code FlatTouch}). A patch that stands on another's plane with nothing but common corners and edges is
 *       clear of it; what is then left is compared facet by facet ({@code PatchContact}).
 *   <li>The sign and depth of each shell, by its exact volume and one exact ray ({@code Shells}).
 * </ol>
 * Steps 1 to 5 take a time proportional to the facets but for the trees over loops that are not convex; step 6 is n log n
 * where boxes overlap few others. All signs are exact: in a long where bounds say that it suffices, else by doubles with a
 * bound on their error, else in 128 bits.
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
