/**
 * Solves the truck of a plan: heights with their tolerances, what the magnets must hold and which of them do, and which
 * pole looks up in each pocket. {@link outrigger.generator.fit.TruckFit} does all of it and keeps the working;
 * {@code docs/truck.md} tells the assumptions and where they come from.
 */
package outrigger.generator.fit;
