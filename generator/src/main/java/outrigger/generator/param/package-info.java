/**
 * Parameters: declared once on record components, read from text, checked, and remembered with where they came from.
 *
 * <p>{@link outrigger.generator.param.ParamSpec} reads the declarations of a record. {@link
 * outrigger.generator.param.ParamValues} gathers what was given for it (defaults, plan, command line) and builds the
 * record, or refuses with every fault at once in an {@link outrigger.generator.param.InputException}. All text goes
 * through one parser for each {@link outrigger.generator.param.Form}, whatever place it comes from.
 */
package outrigger.generator.param;
