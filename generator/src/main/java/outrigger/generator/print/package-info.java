/** From printers, materials and wishes to the limits that parts are held against, and the words for what was found. */
package outrigger.generator.print;
