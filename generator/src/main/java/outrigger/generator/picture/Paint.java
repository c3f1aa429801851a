package outrigger.generator.picture;

import java.util.List;
import outrigger.shapes.print.FacetField;

/** What colour a figure's facets have. */
interface Paint {
  /** No colour anywhere. */
  Paint NONE = new Paint() {
    @Override
    public int hue(int facet) {
      return Hue.NONE;
    }

    @Override
    public int hueOf(FacetField.Place place) {
      return Hue.NONE;
    }

    @Override
    public List<FacetField.Place> spots(int facet) {
      return List.of();
    }
  };

  /** Colour of a facet. */
  int hue(int facet);

  /** Colour of a place on a facet. */
  int hueOf(FacetField.Place place);

  /** Places on a facet with a colour of their own, in the order in which they are laid on it. */
  List<FacetField.Place> spots(int facet);
}
