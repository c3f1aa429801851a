/**
 * The truck as measured: what a plan says of it beside the parts wanted.
 *
 * <p>Each table of a plan ({@code [truck]}, {@code [rail]}, {@code [[mount]]} and so on, see {@link
 * outrigger.generator.truck.Tables}) is one record whose components carry {@code @Param}, so that every key has unit,
 * range, default and a sentence. {@link outrigger.generator.truck.Truck} holds them all, each as {@link
 * outrigger.generator.truck.Told} with the place where it was written.
 *
 * <p>Axes follow ISO 8855: X forward, Y left, Z up; the origin lies on the centre line, in the plane of the rails' tops
 * at x = 0, and at the front axle along X. Millimetres, degrees, grams.
 */
package outrigger.generator.truck;
