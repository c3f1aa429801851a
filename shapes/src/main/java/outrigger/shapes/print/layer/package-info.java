/**
 * What each layer leaves without anything below: layers laid one on the other as a printer lays them.
 *
 * <p><b>Input.</b> A specimen and the overhang limit. <b>Output.</b> {@link Hang}s: pieces of one layer that stand out too
 * far over the layer below, with the undersides they belong to.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link Layering} tells the heights at which layers are sliced.
 * <li>{@link Undersides} gathers the only causes: facets that face downward beyond the limit, and corners with nothing below
 *     them. Layers without a cause are not looked at.
 * <li>{@link LayerScan} slices the other layers and the ones below them, takes the lower area away from the upper one, and
 *     asks how far the edge of each piece left lies from the outline below ({@code FreeEdges}): what the limit allows is
 *     carried. {@code Causes} tells the undersides and corners of a piece. {@link OutlineGrid} and {@code LoopArea} tell
 *     what is near an outline or within it. {@code OutPoints} keeps the points that stand out, less what they lie beside the
 *     {@link Shadow} of the steep facet under them ({@code SteepUnder}).
 * <li>{@link Rim} tells which edges of such a piece are carried. {@code Cuts} are lines laid across it, as a printer lays
 *     beads; {@code Beads} sums them up, {@link Chords} keeps points of them: what holds both ends is a bridge, what does
 *     not is a {@link FreePart} and stands out into the air. {@code RimReach} tells how far all of it lies from what is
 *     below.
 * <li>Where that leaves a concern and what carries lies in several places, {@code Holds} tells the ways between these, and
 *     {@code Spans} seeks the shortest lines that still lay as much: {@code Laying} lays them from hold to hold and then
 *     across, in {@code Strips} that are exact.
 * </ol>
 *
 * <p><b>Sources.</b> I. E. Sutherland, G. W. Hodgman, <i>Reentrant polygon clipping</i> (1974), for {@code ConvexClip}. Why
 * no other cause need be looked at is told in {@code Undersides}.
 */
package outrigger.shapes.print.layer;
