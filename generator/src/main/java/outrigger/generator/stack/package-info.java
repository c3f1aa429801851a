/**
 * An exact thickness from what lies at hand: sheet stock, washers, shims and at most one printed block.
 *
 * <p>{@link outrigger.generator.stack.StackParams} says what is wanted, {@link outrigger.generator.stack.Stacks} turns
 * it into kinds of piece and hands them to {@code StackSearch}, and its answers come back as
 * {@link outrigger.generator.stack.Found}. Thicknesses are whole nanometres from there on, so that sums are exact and
 * the search is complete within the number of pieces asked for: nothing that reaches the target is missed, and no
 * stack of fewer pieces exists than the first one told.
 *
 * <p>What is not promised: that a sheet is as thick as its name says. Every answer tells what its pieces may be off.
 */
package outrigger.generator.stack;
