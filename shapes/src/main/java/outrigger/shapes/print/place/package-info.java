/**
 * Narrow spots put together into places that a maker would name: a wall, a rib, a pin, a slot, a notch.
 *
 * <p><b>Input.</b> Narrow spots and those beside them. <b>Output.</b> {@link NarrowPlace}s, narrowest first: where each is
 * narrowest, its form, its extents, its surface.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link NarrowPlaces} joins spots whose balls have their middles within a link of each other. Distances alone decide.
 * <li>Pins side by side, nearer than that, are parted again: the middles of each keep to its axis.
 * <li>{@link Descent} goes from the narrowest spot of a place to where its two facets come closest ({@code FacetPair}), as
 *     far as a ball held there bears it out. On meshes finer than samples {@code FineDescent} goes before it from facet to
 *     facet ({@code Around}) and to the border of their faces.
 * <li>{@code SpotSpread} tells the form of a place by how normals and middles of its spots spread ({@code Axes}). Whether
 *     a strip stands on something or goes right through, {@code FarEnd} tells.
 * <li>{@link FineAreas} measures again over how much surface small places are narrow.
 * </ol>
 *
 * <p><b>Sources.</b> T. Moeller, B. Trumbore, <i>Fast, minimum storage ray-triangle intersection</i> (1997), for the look
 * through to the far end.
 */
package outrigger.shapes.print.place;
