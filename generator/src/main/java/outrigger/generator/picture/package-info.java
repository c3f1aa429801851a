/**
 * Pictures of proven meshes, so that a part is seen before plastic is spent: a view without perspective from the right,
 * front and above, parts to one scale over their names, and a bar of a round length.
 *
 * <p>{@link outrigger.generator.picture.Pictures} is the front. A page is strips one below the other: a row of parts with
 * their names, and last the scale's bar. A strip is drawn in bands, so that a long page takes no more memory than a short
 * one but for its pixels. In a band, facets turned to the eye are filled by depth, shaded by two lights; then creases of
 * more than 25 degrees and outlines are drawn as thin lines where nothing hides them; last, text. Nine fine pixels make
 * one of the picture.
 *
 * <p>Plain arithmetic, a PNG writer and a compressor of a page each; no window system, no fonts, no image library.
 * Lettering is the project's own stroke text. Same meshes and names, same bytes, on every machine.
 *
 * <p>Not promised: that a line closer than a third of a pixel behind an edge is hidden, or that round walls of under
 * a third of a millimetre radius, whose flats turn by more than 25 degrees, are drawn without the edges between them.
 */
package outrigger.generator.picture;
