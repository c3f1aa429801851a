/** What the kinds of part take, told for people (pages in {@code docs/parameters}) and for programs (JSON). */
package outrigger.generator.doc;
