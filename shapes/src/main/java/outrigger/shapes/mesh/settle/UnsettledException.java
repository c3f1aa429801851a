package outrigger.shapes.mesh.settle;

import outrigger.shapes.num.Place;
import outrigger.shapes.num.ShapeException;

/** Facets that rounding makes meet, and whose corners cannot be put clear of each other. */
public final class UnsettledException extends ShapeException {
  /** For facets that meet near a place. */
  public UnsettledException(Place place) {
    super("rounding to the grid makes facets meet near " + place.mm(),
        "Move or turn one of the parts there a little, so that they meet less narrowly.");
  }
}
