package outrigger.shapes.check;

/**
 * One thing wrong with a mesh, and where.
 *
 * @param rule short name of the rule broken, lower case with dashes
 * @param x place, mm
 * @param y place, mm
 * @param z place, mm
 * @param message what is wrong there, in a maker's words
 * @param advice what to change
 */
public record Finding(String rule, double x, double y, double z, String message, String advice) {}
