package outrigger.presets;

/**
 * One value of an item, ready to print, with where it comes from.
 *
 * @param column column of the table, such as {@code head-diameter}
 * @param value the value as text; numbers as plain decimals, lists parted by commas
 * @param unit {@code mm}, {@code degree}, {@code degree-C}, {@code g/cm3}, or empty for texts and bare numbers
 * @param source where the value comes from
 */
public record Sourced(String column, String value, String unit, Source source) {}
