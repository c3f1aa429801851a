package outrigger.shapes.print;

/**
 * A number worth telling though nothing is wrong, such as the thinnest wall.
 *
 * @param name lower case with dashes, such as {@code thinnest-wall}
 * @param value in the unit
 * @param unit such as {@code mm}
 * @param words one line for the maker, with the number in it, without full stop
 */
public record Fact(String name, double value, String unit, String words) {}
