/**
 * Where things lie: items into trays and between rails.
 *
 * <p>{@link outrigger.generator.layout.Packing} lays rectangles on one floor and finds a way wherever there is one, {@code
 * Narrows} on floors that close in and part again; {@link outrigger.generator.layout.Arranger} shares items out over rooms
 * and says what does not fit, and by how much. Axes are those of the rooms: X forward, Y left; mm, but whole micrometres
 * within the search.
 */
package outrigger.generator.layout;
