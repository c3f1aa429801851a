/**
 * The gauge of standing: whether the part stays where it was begun.
 *
 * <p><b>Input.</b> A specimen. <b>Output.</b> Of {@link StandingGauge}: too little on the bed, tipping over, a slender part,
 * a bed too small, holes that the first layers bulge into.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>The slice through the middle of the first layer is what stands on the bed; its hull is the foot.
 * <li>The centre of mass is held against the foot, the height against its least width.
 * <li>{@code BedFit} turns the part about the vertical until it fits the bed with its brim, if it does.
 * <li>{@code BedHoles} fits circles to the holes of the first layer and of one above the bulge: those that are no wider
 *     below have no bevel.
 * </ol>
 *
 * <p><b>Sources.</b> None; the limits are common practice ({@link outrigger.shapes.print.Limit}).
 */
package outrigger.shapes.print.stand;
