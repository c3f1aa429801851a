/**
 * Plans: one TOML file a truck, naming the parts wanted and what was measured for them.
 *
 * <p>Top keys are {@code title}, {@code printer}, {@code material} and {@code presets} (a table file, its path relative
 * to the plan). A table {@code [defaults]} gives parameters to every part that has them. Each {@code [[part]]} has a
 * {@code kind}, a {@code name} (the kind if left out) and parameters. A parameter given a list makes one part for each
 * value, two lists one for every pair, named after the values; a parameter that is itself a list takes a list as one
 * value and a list of lists as several.
 *
 * <p>{@link outrigger.generator.plan.PlanReader} gathers every fault of a plan with its line and column and never
 * stops at the first.
 */
package outrigger.generator.plan;
