package outrigger.shapes.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.print.facet.Arrangement;

/**
 * One number a facet, from which a coloured map is drawn; and where large facets are not alike all over, the places on them
 * that were measured.
 *
 * <p>A value that is not a number stands for a facet on which nothing was measured.
 */
public final class FacetField {
  private final String name;
  private final String unit;
  private final double bound;
  private final boolean lowIsBad;
  private final double[] values;
  private final Map<Integer, List<Place>> places;
  private final double elsewhere;

  /**
   * A place on a large facet and about what of it has this value.
   *
   * @param x its middle, mm
   * @param y mm
   * @param z mm
   * @param radius how far about the middle it reaches, mm
   * @param value what was measured there
   */
  public record Place(double x, double y, double z, double radius, double value) {}

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
    this(name, unit, bound, lowIsBad, values.clone(), Map.of(), Double.NaN);
  }

  private FacetField(String name, String unit, double bound, boolean lowIsBad, double[] values,
      Map<Integer, List<Place>> places, double elsewhere) {
    this.name = name;
    this.unit = unit;
    this.bound = bound;
    this.lowIsBad = lowIsBad;
    this.values = values;
    this.places = places;
    this.elsewhere = elsewhere;
  }

  /**
   * The same with the places measured on some facets.
   *
   * @param places by facet
   * @param elsewhere the value of these facets beside their places
   */
  public FacetField withPlaces(Map<Integer, List<Place>> places, double elsewhere) {
    Map<Integer, List<Place>> copy = new LinkedHashMap<>();
    places.forEach((facet, list) -> copy.put(facet, List.copyOf(list)));
    return new FacetField(name, unit, bound, lowIsBad, values, copy, elsewhere);
  }

  /** The same over the facets of the mesh that was put in order. */
  FacetField in(Arrangement arrangement) {
    Map<Integer, List<Place>> moved = new LinkedHashMap<>();
    places.forEach((facet, list) -> moved.put(arrangement.given(facet), list));
    return new FacetField(name, unit, bound, lowIsBad, arrangement.asGiven(values), moved, elsewhere);
  }

  /** The places measured on a facet; none if it is alike all over. */
  public List<Place> places(int facet) {
    return places.getOrDefault(facet, List.of());
  }

  /** A facet's value beside its places; its value if it has none. */
  public double background(int facet) {
    return places.containsKey(facet) ? elsewhere : values[facet];
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
}
