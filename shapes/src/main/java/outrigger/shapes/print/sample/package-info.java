/**
 * Points spread over facets, so that no place of the surface is far from one.
 *
 * <p><b>Input.</b> Facets of a tree and a spacing, mm. <b>Output.</b> A {@link SampleList}: points with their facets and the
 * area each stands for.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link FacetSamples} cuts a facet in strips and these in rows. Points hang on the facet's shape alone, so that a part
 *     that is turned, moved or mirrored has the same ones.
 * <li>The list is put in order along a space-filling curve: neighbours in it lie near each other.
 * <li>{@link Thinning} leaves out samples of narrow facets that have another close by that faces nearly the same way; what
 *     is kept stands for what is left out.
 * </ol>
 *
 * <p><b>Sources.</b> None.
 */
package outrigger.shapes.print.sample;
