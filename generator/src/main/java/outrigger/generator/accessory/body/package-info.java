/**
 * The body mount: parameters, layout, checks, solid, and what goes with it on paper. {@link
 * outrigger.generator.accessory.body.BodyMount} says why it is built standing.
 */
package outrigger.generator.accessory.body;
