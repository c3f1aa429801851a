/**
 * Which facets lie near a place, face each other, or reach farthest along a direction.
 *
 * <p><b>Input.</b> A mesh and the normals of its facets. <b>Output.</b> A {@link FacetTree}, built once and read by several
 * threads, and the ways to ask it: {@link NearSearch} for what lies within a ball, {@link Facing} for where facets stand
 * against each other, {@link FarSide} for what lies farthest, {@link Plumb} for what lies straight above a place of the bed.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code FacetTree} puts facets in slots, by the six sides they face and along a space-filling curve. {@code LeafRuns}
 *     and {@code Leaves} cut the row of slots where it jumps farthest, and {@code TreeBounds} lays bounds over the pieces.
 * <li>{@code PlaceTree} is the same facets by place alone, whatever way they face.
 * <li>{@code NearSearch} walks that second tree, nearest boxes first, within a ball that the walk itself may shrink; what
 *     lies no higher than a {@link Floor} the ball rests on is left out.
 * <li>{@code Facing} pairs nodes of the first tree level by level and drops pairs that are far apart, look alike or of which
 *     neither lies before the other ({@code FacingNodes}, by boxes and {@code Slabs}), and nodes about which all facets look
 *     one way ({@code OpenNodes}). What is left are {@link NearRegions}, boxes in which a ball may be held.
 * </ol>
 *
 * <p><b>Sources.</b> C. Ericson, <i>Real-Time Collision Detection</i> (2005), section 5.1.5, for the closest point of a
 * triangle; M. Frank, P. Wolfe, <i>An algorithm for quadratic programming</i> (1956), for the direction that
 * {@code OpenNodes} seeks.
 */
package outrigger.shapes.print.tree;
