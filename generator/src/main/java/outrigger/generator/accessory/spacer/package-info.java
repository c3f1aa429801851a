/** Spacers between bumper and chassis: plates of exact thickness with a pattern of screw holes. */
package outrigger.generator.accessory.spacer;
