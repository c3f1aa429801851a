/**
 * Which operands hold at a place, whether the expression does, and what need not be asked.
 *
 * <p><b>Input.</b> The expression, faces, points. <b>Output.</b> Winding numbers of operands, whether the expression holds
 * where these are so, and whether something lies hidden where it cannot show.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>An operand holds where its winding number is positive. {@link Membership} keeps the numbers, in {@link Windings}, and
 *     of each node of the expression whether it holds: a step over a surface changes one number and climbs only as far as
 *     that matters.
 * <li>{@link Locator} finds the numbers at one place. Of the operands whose boxes hold it, {@code ConvexOperands} tells
 *     by the planes of their faces ({@code Convexity}, {@code Walls}), the others by a ray that is taken to run a breath
 *     beside all edges. {@link WindingCount} hands on what was found. {@link InnerLook} tries points of a triangle until
 *     one is on no face.
 * <li>{@code Dominance} reads off the expression inside which operand others cannot matter, and outside of which. {@link
 *     Hiding} looks whether a face, or what two faces may have in common, lies strictly inside such a one that is convex but
 *     for rounding, or beyond a plane of it: its ends suffice for that. For most pairs {@link RoughStretch} tells it in
 *     doubles, with a bound, and {@link HiddenParts} so what of a stretch is hidden and what is not.
 * </ol>
 *
 * <p><b>Sources.</b> Requicha and Voelcker, <i>Boolean operations in solid modeling</i>, Proc. IEEE 73 (1985), for deciding
 * by membership; Zhou, Grinspun, Zorin, Jacobson, <i>Mesh arrangements for solid geometry</i>, ACM TOG 35 (2016), for
 * winding numbers of all operands at once; Rossignac and Voelcker, <i>Active zones in CSG</i>, ACM TOG 8 (1989), for the
 * zone in which an operand matters; Edelsbrunner and Mücke, <i>Simulation of simplicity</i>, ACM TOG 9 (1990), for a ray
 * moved by less than anything.
 */
package outrigger.shapes.mesh.inside;
