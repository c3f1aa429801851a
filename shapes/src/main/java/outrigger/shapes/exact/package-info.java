/**
 * Exact decisions over grid coordinates.
 *
 * <p>Inputs are integers: coordinates in grid units, in general within +-2^24. Every sign, contact and containment is
 * decided in 64- or 128-bit integers or wider, so there is no tolerance anywhere, and touching or coplanar input is an
 * ordinary case. Nothing here knows of meshes, solids or files.
 *
 * <ul>
 *   <li>{@link outrigger.shapes.exact.Sign}: the side of a point against a line or a plane;
 *   <li>{@link outrigger.shapes.exact.FacetContact}: whether two facets meet where they should not;
 *   <li>{@link outrigger.shapes.exact.BoxTree}: which boxes overlap, so that not all pairs need be asked;
 *   <li>{@link outrigger.shapes.exact.Total}: a 128-bit sum of products.
 * </ul>
 */
package outrigger.shapes.exact;
