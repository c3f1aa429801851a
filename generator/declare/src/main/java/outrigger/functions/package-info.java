/**
 * A tool that runs after the compiler, over class files: makes plain classes of function values. Java otherwise makes such
 * a class up at run time, at the first use of each lambda and method reference, which was a fifth of a short run. The
 * launcher runs it on the jars before it dumps their class data; what it leaves alone works as before. No part of the
 * program.
 *
 * <p>Chapters named are those of the Java Virtual Machine Specification, Java SE 17 edition.
 *
 * <ol>
 *   <li>{@link outrigger.functions.PlainFunctions} reads every class of a jar ({@link outrigger.functions.ClassFile}).
 *   <li>Where code makes a function value ({@link outrigger.functions.Instructions} finds those places, {@link
 *       outrigger.functions.FunctionSite} says what they ask for), it is made to call a class of its own instead ({@link
 *       outrigger.functions.FunctionClass}), by an instruction of the same length: nothing else in the code moves.
 *   <li>The new class joins the nest of the old one, so that it may call what is private there.
 * </ol>
 */
package outrigger.functions;
