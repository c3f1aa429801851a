/**
 * Measured things: screws, nuts, washers, holes, inserts, magnets and their grades, rails, printers, materials,
 * electronics and sheet stock.
 *
 * <p>Data flows one way: a table file becomes text ({@code FileText}), a TOML tree ({@code TableFile}), rows of values
 * with sources ({@code TableReader}), records ({@code TableSpec}), and stands on the {@link outrigger.presets.Shelf}.
 *
 * <p>Input rules: {@code docs/presets.md}. What is promised: every item is complete and its numbers finite and in
 * range, every value has a source, a file with any fault changes nothing, and all its faults are told at once with line
 * and column. What is not promised: that a value is right; {@link outrigger.presets.Source} says what vouches for it,
 * and {@code docs/sources.md} what was verified.
 *
 * <p>Columns and makers are written out in {@code Tables}, one list for all tables, rather than found by reflection: it
 * starts faster and the compiler checks it. The records repeat the checks on single values, as programs make them too.
 * This package imports nothing else of the program.
 */
package outrigger.presets;
