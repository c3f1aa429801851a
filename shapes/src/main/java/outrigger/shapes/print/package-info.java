/**
 * What of a sound part a careful maker would worry about before printing it, measured on the mesh.
 *
 * <p><b>Input.</b> A {@link Specimen}: a proven mesh as it stands on the bed, and the limits. <b>Output.</b> A
 * {@link PrintReport}: {@link Concern}s with their places, {@link Fact}s, and a number a facet for maps
 * ({@link FacetField}). It shares nothing with how a part was drawn, so it works on anybody's files.
 *
 * <p>Others use what is public here. All else is done in sub-packages, public for each other only, each of which uses those
 * named before it and knows nothing of those after it; none knows {@link Printability}:
 * <ol>
 * <li>{@link outrigger.shapes.print.facet facet}: which way facets face, how large they are, what lies across their edges.
 * <li>{@link outrigger.shapes.print.tree tree}: which facets lie near a place, or stand against each other.
 * <li>{@link outrigger.shapes.print.slice slice}: what level planes cut out of a part, and flat outlines.
 * <li>{@link outrigger.shapes.print.sample sample}: points spread over facets.
 * <li>{@link outrigger.shapes.print.ball ball}: how wide solid or air is at one point, by the ball that is held there.
 * <li>{@link outrigger.shapes.print.spot spot}: where on the whole surface something is narrow.
 * <li>{@link outrigger.shapes.print.place place}: narrow spots put together into walls, ribs, pins, slots.
 * <li>{@link outrigger.shapes.print.wall wall}: the gauges of walls and of gaps.
 * <li>{@link outrigger.shapes.print.layer layer}: what each layer leaves without anything below.
 * <li>{@link outrigger.shapes.print.hang hang}: the gauge of overhangs.
 * <li>{@link outrigger.shapes.print.stand stand}: the gauge of standing.
 * <li>{@link outrigger.shapes.print.pose pose}: the gauge of poses.
 * </ol>
 * The first five know meshes only; the others may speak of a specimen, which holds what the first three make of it.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>The specimen puts facets in an order that hangs on their places alone ({@code Arrangement}); fields are told in the
 *     order of the mesh given again.
 * <li>{@code Printability} gives the specimen to every {@link Gauge}: those of the sub-packages, and {@code HeightGauge} and
 *     {@code MaterialGauge}, which are small enough to stand here. Small parts are read side by side.
 * <li>The first gauge that asks for the tree, the slicer or the normals has the specimen make them, once for all.
 * <li>The {@link Reading}s are put together, errors first.
 * </ol>
 *
 * <p><b>Promised.</b> Same part, same report, whatever the number of threads and the order in which its facets are listed.
 * A part moved, turned about the vertical or mirrored gives the same concerns, moved with it.
 *
 * <p><b>Not promised.</b> That a part without concern prints: the limits are common practice of material extrusion, not
 * physics ({@link Limit}).
 */
package outrigger.shapes.print;
