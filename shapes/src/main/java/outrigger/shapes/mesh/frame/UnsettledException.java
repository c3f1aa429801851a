package outrigger.shapes.mesh.frame;

import outrigger.shapes.num.Place;
import outrigger.shapes.num.ShapeException;

/** Facets that rounding makes meet again and again; rounded in another frame, they may come to rest. */
public final class UnsettledException extends ShapeException {
  private final Place place;

  /** For facets that meet near a place. */
  public UnsettledException(Place place) {
    super("rounding to the grid makes facets meet near " + place.mm(),
        "Move or turn one of the parts there a little, so that they meet less narrowly.");
    this.place = place;
  }

  /** The same, its place brought back from a frame to the axes given. */
  UnsettledException out(Frame frame) {
    return new UnsettledException(frame.out(place));
  }
}
