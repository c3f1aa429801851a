package outrigger.shapes.mesh;

import outrigger.shapes.num.ShapeException;

/** Facets that rounding makes meet again and again; rounded in another frame, they may come to rest. */
final class UnsettledException extends ShapeException {
  UnsettledException(String place) {
    super("rounding to the grid makes facets meet near " + place,
        "Move or turn one of the parts there a little, so that they meet less narrowly.");
  }
}
