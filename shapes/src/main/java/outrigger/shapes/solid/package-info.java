/**
 * Solids as exact descriptions: prisms and revolutions of profiles, and facets proven before, placed, joined, cut and met.
 *
 * <p><b>Input.</b> Millimetres and degrees. Each record checks what can be told before building and throws
 * {@link outrigger.shapes.num.ShapeException} in words. Coordinates reach +-1024 mm.
 *
 * <p><b>Promise.</b> A solid is a value: nothing is computed until {@code mesh.Mesher} evaluates the whole expression,
 * and the same description gives the same mesh. Faces that are flush, coplanar or touching need no overlap and no gap.
 *
 * <p><b>Not promised.</b> That the result is one piece, or that it does not touch itself: where parts meet only along a
 * line or at a point no print file can say so, and evaluation or proof refuses it with the place.
 *
 * <p><b>Rims and draft</b> move a prism's outline into the matter by mitre, all corners keeping their count, so a rim may
 * be as large as the smallest corner radius of the outline and no larger.
 */
package outrigger.shapes.solid;
