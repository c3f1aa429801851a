/**
 * Numbers and places: the grid that all coordinates lie on, axes, placements, and what is thrown for a bad shape. Besides,
 * how work is spread over threads and stopped, and lists, maps and sets of plain ints, without an object for each.
 *
 * <p>The only tolerance of the whole layer is the grid step, {@link outrigger.shapes.num.Grid#STEP}.
 */
package outrigger.shapes.num;
