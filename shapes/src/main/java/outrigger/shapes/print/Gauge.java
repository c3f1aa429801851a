package outrigger.shapes.print;

/**
 * Measures one thing about a sound part that decides whether it prints.
 *
 * <p>The same specimen gives the same reading, whatever the number of workers. A part moved, turned about the vertical or
 * mirrored gives the same concerns, moved with it. Gauges hold no state.
 */
public interface Gauge {
  /** What it measures, lower case with dashes. */
  String name();

  /** Reads a part. Throws nothing for any sound mesh: what cannot be measured is said in the reading. */
  Reading read(Specimen specimen);
}
