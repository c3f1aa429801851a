/**
 * Flat regions on the grid: outlines, Booleans, offsets and lettering. The only package that uses JTS.
 *
 * <p><b>In:</b> lengths in millimetres, angles in degrees. Every size must be a finite number above zero; what is not
 * is refused by a {@link outrigger.shapes.num.ShapeException} naming the size, its value and its limit.
 *
 * <p><b>Out:</b> a {@link outrigger.shapes.profile.Profile} holds regions whose corners are whole grid units
 * (2^-14 mm). A shell runs counter-clockwise, a hole clockwise; the first corner is not repeated and is the smallest
 * by x, then y; no three corners in a row lie on one line; holes and regions stand in a fixed order. The same input
 * gives the same corners, whatever was done in between.
 *
 * <p><b>Round things.</b> A circle's radius is rounded to the grid first, outward for holes and inward for posts. Its
 * polygon has a multiple of 4 sides, as few as keep the chord error ({@link outrigger.shapes.profile.Circles}), and
 * mirrors itself in both axes. A hole's flats touch the circle, two of them on each axis, and no corner is rounded
 * towards it; a post's corners lie on or inside the circle, two of them on each axis.
 *
 * <p><b>How.</b> Outlines are made from integers directly. Booleans go through JTS {@code OverlayNG} in grid units
 * with a fixed precision model, which rounds each crossing to the grid and keeps the topology right while it does so.
 *
 * <p><b>Not promised.</b> Two rings may touch at a point, as JTS allows. Such a profile has an area and a boundary
 * like any other, but its prism touches itself along a line and cannot be made sound alone; it is refused when meshed,
 * unless other solids of the same expression cover the line or cut it away.
 */
package outrigger.shapes.profile;
