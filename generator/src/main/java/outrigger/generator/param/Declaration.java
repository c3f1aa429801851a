package outrigger.generator.param;

/**
 * A component of a record and what {@link Param} says of it.
 *
 * @param name the component's name
 * @param type its type
 * @param element type of its elements if it is a list, otherwise its type again
 */
public record Declaration(String name, Class<?> type, Class<?> element, Unit unit, double min, double max, String def,
    String help) {}
