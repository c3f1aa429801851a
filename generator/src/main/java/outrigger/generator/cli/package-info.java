/**
 * The command line: all printing, exit codes and {@link outrigger.generator.cli.Main}.
 *
 * <p>Exit codes: 0 done, 1 a defect of the program, 2 bad input (nothing written), 3 built or read but not sound
 * (nothing written), or no stack found.
 */
package outrigger.generator.cli;
