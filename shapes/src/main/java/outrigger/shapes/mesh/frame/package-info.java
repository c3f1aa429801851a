/**
 * In which axes an expression is evaluated, and how corners off the grid come to it.
 *
 * <p><b>Input.</b> The operands, and which of them are cut away. <b>Output.</b> A {@link Frame}: an order of axes, a way
 * along each, and an origin, the same as seen from the operands however these are moved by grid steps, turned by quarters or
 * mirrored. So the result is the same bit for bit, but for that move.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code Moments} sums powers of the coordinates of all faces about the middle of the bounds. Even ones put the axes in
 *     order, odd ones turn each of them its way.
 * <li>Of the frames that these leave open {@code Signature} takes the one in which all corners hash to the least number.
 * <li>What is evaluated in that frame is {@link Rounded} to the nearest grid point. What does not come to rest so
 *     is evaluated in the axes of operands that are turned by any angle ({@link Turns}).
 * </ol>
 *
 * <p><b>Sources.</b> None known; ordering axes by moments is common where shapes are to be compared whatever their pose.
 */
package outrigger.shapes.mesh.frame;
