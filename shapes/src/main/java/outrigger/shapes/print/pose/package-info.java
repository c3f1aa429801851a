/**
 * The gauge of poses: which way to lay the part on the bed.
 *
 * <p><b>Input.</b> A specimen. <b>Output.</b> Of {@link PoseGauge}: how many ways are better than the one it stands in, and
 * the best of them. No concern: nobody said that the part must lie as it does.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code FarPoints} takes the vertices that may lie outermost, and {@code Hull} lays the convex hull round them.
 * <li>{@code Poses} lists directions: how the part stands, the largest faces of the hull and the largest flat faces.
 * <li>{@code PoseTrial} lays the part each way: height, what touches the bed, how far it must be tilted
 *     before it falls, and how much room lies below steep facets.
 * <li>{@code PoseRank} puts each {@code Pose} before or after another.
 * </ol>
 *
 * <p><b>Sources.</b> Barber, Dobkin and Huhdanpaa, <i>The quickhull algorithm for convex hulls</i>, ACM TOMS 22 (1996).
 */
package outrigger.shapes.print.pose;
