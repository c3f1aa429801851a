/**
 * How wide the solid, or the air before it, is at one point of the surface.
 *
 * <p><b>Input.</b> A point on a facet and the way to measure, inward or outward. <b>Output.</b> A {@code Ball} of
 * {@link BallProbe}: its middle, its width, and how it is held, if it is.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code TangentBall} finds the largest ball that touches at the point and holds no other facet.
 * <li>{@link Touching} gathers what the ball rests on, and {@link Spokes} works out which way all that pulls it. If it is
 *     hardly pulled, it is held as between two walls, and its width is the answer.
 * <li>Else it rests in a corner: {@code RollingBall} moves it the way it is pulled, growing, until it meets a facet. The
 *     last two steps go on until it is held or as wide as asked.
 * <li>{@link HeldBalls} remembers balls that were held: what touches one squarely needs no search.
 * </ol>
 *
 * <p><b>Sources.</b> J. Ma, S. W. Bae, S. Choi, <i>3D medial axis point approximation using nearest neighbors and the normal
 * field</i> (2012), for the shrinking ball; A. Lieutier, <i>Any open bounded subset of R^n has the same homotopy type as its
 * medial axis</i> (2004), for the direction in which the distance grows fastest.
 */
package outrigger.shapes.print.ball;
