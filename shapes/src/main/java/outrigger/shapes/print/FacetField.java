package outrigger.shapes.print;

/**
 * One number a facet, from which a coloured map is drawn.
 *
 * <p>A value that is not a number stands for a facet on which nothing was measured.
 */
public final class FacetField {
  private final String name;
  private final String unit;
  private final double bound;
  private final boolean lowIsBad;
  private final double[] values;

  /**
   * A field over all facets of a mesh.
   *
   * @param name lower case with dashes, such as {@code wall-thickness}
   * @param unit of the values
   * @param bound the value at which a facet becomes a concern
   * @param lowIsBad whether values below the bound are the concern, or those above it
   * @param values one a facet, in the mesh's order; copied
   */
  public FacetField(String name, String unit, double bound, boolean lowIsBad, double... values) {
    this.name = name;
    this.unit = unit;
    this.bound = bound;
    this.lowIsBad = lowIsBad;
    this.values = values.clone();
  }

  /** Its name. */
  public String name() {
    return name;
  }

  /** Unit of its values. */
  public String unit() {
    return unit;
  }

  /** The value at which a facet becomes a concern. */
  public double bound() {
    return bound;
  }

  /** Whether small values are the concern. */
  public boolean lowIsBad() {
    return lowIsBad;
  }

  /** Number of facets. */
  public int size() {
    return values.length;
  }

  /** A facet's value; not a number where nothing was measured. */
  public double value(int facet) {
    return values[facet];
  }

  /** Whether a facet is a concern. */
  public boolean isBad(int facet) {
    return lowIsBad ? values[facet] < bound : values[facet] > bound;
  }
}
