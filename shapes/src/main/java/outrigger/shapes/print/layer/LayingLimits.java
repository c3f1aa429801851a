package outrigger.shapes.print.layer;

/**
 * What lines laid over an area are held against; mm.
 *
 * @param bridge lines no longer than this are no concern
 * @param ledge what lines leave may stand out so far
 * @param narrowest strips of lines narrower than this carry nothing
 * @param snap outlines nearer than this are one
 */
record LayingLimits(double bridge, double ledge, double narrowest, double snap) {}
