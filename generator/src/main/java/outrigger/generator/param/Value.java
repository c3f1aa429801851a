package outrigger.generator.param;

/**
 * A parameter's value as it was used.
 *
 * @param text the value as a user would write it, numbers in the parameter's unit
 * @param origin where it came from
 */
public record Value(Parameter parameter, String text, Origin origin) {}
