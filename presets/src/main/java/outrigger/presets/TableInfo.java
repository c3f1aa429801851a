package outrigger.presets;

/**
 * A table of the shelf.
 *
 * @param key what users type and files are called, such as {@code disc-magnets}
 * @param title heading, such as {@code Disc magnets}
 * @param type record of its items
 */
public record TableInfo(String key, String title, Class<? extends Item> type) {}
