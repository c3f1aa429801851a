package outrigger.shapes.check;

/**
 * How often a rule is broken, listed or not.
 *
 * @param rule the rule's short name, as in {@link Finding#rule()}
 * @param count how many times, 1 or more
 */
public record Tally(String rule, int count) {}
