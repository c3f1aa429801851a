/**
 * Everything that has a place on the truck, as clash elements: rails, printed parts at their poses, their screws with the
 * ways of the tools, the items as laid, and the room the body keeps for itself. Truck axes.
 */
package outrigger.generator.scene;
