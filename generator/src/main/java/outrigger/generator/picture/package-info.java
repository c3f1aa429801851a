/**
 * Pictures of proven meshes, so that a part is seen before plastic is spent: an oblique view from the right, front and
 * above, to one scale, with creases drawn, names and a bar of 10 mm.
 *
 * <p>Plain arithmetic and a PNG encoder of a page; no window system, no fonts, no image library. Lettering is the
 * project's own stroke text. Same meshes and names, same pixels.
 */
package outrigger.generator.picture;
