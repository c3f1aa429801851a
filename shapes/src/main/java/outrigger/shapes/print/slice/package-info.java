/**
 * What level planes cut out of a part, and flat outlines.
 *
 * <p><b>Input.</b> A proven mesh and a height. <b>Output.</b> A {@link Slice}: closed loops of points, mm. Of loops and
 * points {@link Outline} tells the area and leaves corners out that hardly matter; {@link FlatBox} is the box round them,
 * {@link FlatHull} the convex hull, {@link FlatCircle} the circle that fits best.
 *
 * <p><b>Steps</b> of {@link Slicer}.
 * <ol>
 * <li>The plane is laid a half grid step off the grid: no corner lies in it, and each facet is crossed or is not.
 * <li>Of many planes, rising, the facets that each crosses are found in one pass over all facets.
 * <li>The outline is walked from facet to facet over their common edges, until it closes.
 * <li>{@link Blocks} cuts many heights into blocks that several threads take, and keeps their order.
 * </ol>
 *
 * <p><b>Sources.</b> A. M. Andrew, <i>Another efficient algorithm for convex hulls in two dimensions</i> (1979), for
 * {@link FlatHull}; I. Kasa, <i>A circle fitting procedure and its error analysis</i> (1976), for {@link FlatCircle}.
 */
package outrigger.shapes.print.slice;
