/**
 * The kinds of part that can be made: a parameter record and a pure builder each, listed in {@link
 * outrigger.generator.accessory.Accessories}. Each kind has a sub-package of its own.
 */
package outrigger.generator.accessory;
