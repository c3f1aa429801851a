/**
 * Outlines the faces that others only pass through, and free loops on the rest, by walking along wires, which are rims of
 * faces and stretches: nothing is triangulated for them.
 *
 * <p><b>Input.</b> Faces that were arranged. <b>Output.</b> The pieces of their edges, and of the stretches on them, that
 * bound the result, written into an outline.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link Wires} sorts the piercings along each edge, and has a {@code WireWalker} walk each operand.
 * <li>A look at one place tells the {@code Surroundings}, which operands hold there. From there the walk goes round the
 *     rims. Which operands hold changes only at piercings, by one each; and where the walk leaves one that hides something,
 *     it looks anew.
 * <li>On each piece of an edge the walk asks the expression with its own operand counted out and in. Where the two answers
 *     differ, the face at the edge bounds the result: as it is, or turned over where the operand is cut away.
 * <li>At a piercing a {@code StretchWalker} follows the stretches there in the same way, asking with either operand in and
 *     out: {@code WireOutline} reads off the four answers which of the four pieces of surface at a stretch bound the result.
 * <li>{@code WireNotes} holds what each walk finds until the ends of all walks before it have numbers in the outline; then
 *     edges are written down, by several threads if there are many. Stretches that no walk came by are followed last, each
 *     with a look of its own.
 * </ol>
 *
 * <p><b>Sources.</b> Requicha and Voelcker, <i>Boolean operations in solid modeling</i>, Proc. IEEE 73 (1985): an edge
 * bounds the result where the expression is not the same all round it. Carrying the numbers along lines instead of over
 * cells is this package's own.
 */
package outrigger.shapes.mesh.wire;
