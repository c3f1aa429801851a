/**
 * From what is wanted to files: parameters, solid, mesh, proof, bytes, folder. Prints nothing.
 *
 * <p>{@link outrigger.generator.run.Workshop} makes a plan's parts on as many threads as it is told to; what it returns
 * does not depend on how many. It writes them into a folder, all or none. Nothing reaches a folder before every part of
 * a plan is proven sound.
 */
package outrigger.generator.run;
