/**
 * What of a sound part a careful maker would worry about before printing it, measured on the mesh.
 *
 * <p>{@link outrigger.shapes.print.Printability} runs every {@link outrigger.shapes.print.Gauge} over a
 * {@link outrigger.shapes.print.Specimen} (a proven mesh as it stands on the bed, and the limits) and collects
 * {@link outrigger.shapes.print.Concern}s with their places, {@link outrigger.shapes.print.Fact}s, and a number a facet
 * for maps. It shares nothing with how a part was drawn, so it works on anybody's files.
 *
 * <p><b>Promised.</b> Same specimen, same report, whatever the number of threads. A part moved, turned about the
 * vertical or mirrored gives the same concerns, moved with it.
 *
 * <p><b>Not promised.</b> That a part without concern prints: the limits are common practice of material extrusion, not
 * physics ({@link outrigger.shapes.print.Limit}).
 */
package outrigger.shapes.print;
