/**
 * The gauges of walls and of gaps, which are one measurement on two sides of the surface.
 *
 * <p><b>Input.</b> A specimen. <b>Output.</b> Of {@link WallGauge}: walls, ribs, pins and sharp edges too thin to print, and
 * the thinnest wall. Of {@link GapGauge}: slots and strokes that close up, holes to be drilled. Of both a map of widths.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code Widths} sets the spacing of samples by the limits, wider where a part would need too many, and says so.
 * <li>Narrow spots are sought on faces and, for walls, on inner edges, and put together into places.
 * <li>Of walls, even ones are parted from the edges they run out to ({@code WallsAndEdges}).
 * <li>Each place is held against the limit that its form calls for, and told in words, the worst few of each rule
 *     ({@code WallConcerns}, and {@code GapGauge} itself).
 * <li>Where no wall is too thin, {@code Thinnest} looks for the thinnest one with few samples; no promise hangs on it.
 * </ol>
 *
 * <p><b>Sources.</b> None; the limits are common practice ({@link outrigger.shapes.print.Limit}).
 */
package outrigger.shapes.print.wall;
