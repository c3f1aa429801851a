package outrigger.generator.accessory;

import java.util.List;
import outrigger.generator.param.BadDimension;

/**
 * One kind of part that Outrigger makes.
 *
 * @param <P> its parameters, a record whose components carry {@code @Param}
 */
public interface Accessory<P extends Record> {
  /** The name users type, such as {@code body-mount}. */
  String kind();

  /** One sentence: what it is. */
  String summary();

  /** The parameter record. */
  Class<P> parameters();

  /**
   * Builds the parts for one set of parameters: usually one; a set of spacers is several. Pure: same parameters,
   * same parts.
   *
   * @param shelf tables for what follows from a parameter, such as the clearance hole of a screw size
   * @throws BadDimension where dimensions cannot work together, in the user's words
   */
  List<Part> build(P parameters, outrigger.presets.Shelf shelf);
}
