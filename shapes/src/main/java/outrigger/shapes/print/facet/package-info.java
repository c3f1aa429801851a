/**
 * What a mesh's facets are by themselves: which way they face, how large they are, and what lies across their edges.
 *
 * <p><b>Input.</b> A proven mesh. <b>Output.</b> {@link Facets}: unit normals and areas. {@link Seams}: the half-edge
 * across each half-edge. {@link DirectionSums}: area, sum of normals and volume below all facets that face a way, without
 * a look at each. {@link Arrangement}: the mesh with its facets in an order that hangs on their places alone.
 * {@link Edges}: which edges reach into what is measured. {@link Cones}: how far the ways a ball may rest at a facet's edges
 * and corners reach beyond its normal. Beside them what all other parts reckon with: {@link Vec}, {@link Extremes} and
 * {@link CubeMap}.
 *
 * <p><b>Steps.</b> Each takes linear time but the first, in n log n; edges and cones are looked at where they are asked for.
 * <ol>
 * <li>{@code Arrangement} sorts facets along a space-filling curve, ties by their corners.
 * <li>{@code Facets} takes the cross product of two edges of each facet in grid units, and rounds its parts to 32 bits.
 * <li>{@code Seams} sorts half-edges by the lower number of their two vertices and pairs those with the same higher one.
 * <li>{@code DirectionSums} numbers facets by the cell of {@code CubeMap} they face, and adds up each cell. Asked for a
 *     direction, it takes or drops cells by their bounds, and looks at single facets where bounds do not decide.
 * </ol>
 *
 * <p><b>Sources.</b> M. Abramowitz, I. A. Stegun, <i>Handbook of Mathematical Functions</i> (1964), 4.4.46, for the arc
 * cosine of {@link Cones}.
 */
package outrigger.shapes.print.facet;
