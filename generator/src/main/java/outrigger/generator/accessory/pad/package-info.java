/** The body pad: the body's half of a magnet mount, a plate with a pocket glued under the body's floor. */
package outrigger.generator.accessory.pad;
