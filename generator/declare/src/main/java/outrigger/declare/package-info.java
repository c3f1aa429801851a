/**
 * A plug-in of the compiler: turns {@code @Param} on the components of a record into a class that lists them, so that no
 * annotation is read while the program runs. No part of the program.
 */
package outrigger.declare;
