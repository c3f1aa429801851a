package outrigger.generator.layout;

/**
 * Whether an item fits a room that is otherwise empty.
 *
 * @param lack by how much it does not
 */
public record Fit(Item item, Room room, Lack lack) {}
