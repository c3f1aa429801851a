/**
 * Outlines the faces that are touched, stood on or flush with others: a sheet for each of their planes.
 *
 * <p><b>Input.</b> The segments on each plane: what faces that cross it or stand on it change in the winding numbers just
 * above and just below. <b>Output.</b> The edges of those cells of the plane that bound the result, written into an outline.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link SheetLabels} takes the planes in turn; several threads may lay sheets at once.
 * <li>{@code Sheet} lays the segments of a plane into one constrained triangulation. Each marked edge then knows all
 *     segments along it.
 * <li>{@link SheetWalker} first goes from triangle to triangle from outside and finds those that faces in this plane cover.
 *     Then it looks once in each connected piece of these ({@code CellLook} chooses where), and from there on carries the
 *     numbers above and below along: stepping over an edge adds what its segments say, stepping back takes it away.
 * <li>A triangle bounds the result where the expression holds on exactly one side of it. Edges between triangles that do so
 *     alike are no edges of the result.
 * <li>A flush face apart from all else on its plane is not laid: {@code LoneFace} takes a look inside and one beside it.
 * </ol>
 *
 * <p><b>Sources.</b> Zhou, Grinspun, Zorin, Jacobson, <i>Mesh arrangements for solid geometry</i>, ACM TOG 35 (2016), for
 * labelling cells by carrying winding numbers across.
 */
package outrigger.shapes.mesh.sheet;
