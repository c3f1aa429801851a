/**
 * Features that accessories share: screw holes, labels, what layers make of a height. Each works its dimensions out
 * from presets and refuses, as {@link outrigger.generator.param.BadDimension}, what cannot be made.
 */
package outrigger.generator.accessory.feature;
