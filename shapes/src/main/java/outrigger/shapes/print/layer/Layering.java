package outrigger.shapes.print.layer;

import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Specimen;

/**
 * The layers a printer lays: one first layer and then whole layers; mm.
 *
 * @param bed height of the part's lowest point
 * @param first height of the first layer
 * @param layer height of every other layer
 * @param count layers whose middle lies below the part's highest point, at least 1
 */
public record Layering(double bed, double first, double layer, int count) {

  /** The layers from one height to another, all mm. */
  public static Layering of(double minZ, double maxZ, double first, double layer) {
    int more = (int) Math.max(0, Math.ceil((maxZ - minZ - first) / layer - 0.5));
    return new Layering(minZ, first, layer, 1 + more);
  }

  /** The layers of a part on its printer. */
  public static Layering of(Specimen specimen) {
    return of(specimen.bed(), specimen.measures().maxZ(), specimen.limit(Limit.FIRST_LAYER),
        specimen.limit(Limit.LAYER));
  }

  /** Height of a layer's middle, where it is sliced. */
  public double middle(int index) {
    return index == 0 ? bed + first / 2 : bed + first + (index - 0.5) * layer;
  }

  /** Height of a layer's lower face. */
  double bottom(int index) {
    return index == 0 ? bed : bed + first + (index - 1) * layer;
  }

  /** Distance of a layer's middle from that of the one below; a layer from 1 on. */
  double step(int index) {
    return index == 1 ? (first + layer) / 2 : layer;
  }
}
