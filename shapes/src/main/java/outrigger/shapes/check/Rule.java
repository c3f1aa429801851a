package outrigger.shapes.check;

/** The rules a sound mesh keeps, in the order they are examined. */
enum Rule {
  EMPTY("empty", "The solid has vanished: check that cutters do not remove all of it."),
  OUT_OF_RANGE("out-of-range", "Move the part nearer to its origin, scale it down or split it."),
  ZERO_AREA("zero-area-facet", "Remove the facet and close the surface round it, or separate its corners."),
  DUPLICATE("duplicate-facet", "Remove the facet that is there twice."),
  OPEN_EDGE("open-edge", "Close the hole: add the missing facets or join the neighbours to the same corners."),
  CROWDED_EDGE("crowded-edge", "Join the solids by more than a line, move them apart, or remove the inner wall."),
  FLIPPED("flipped-facet", "Turn the facet that is the wrong way round."),
  PINCHED("pinched-vertex", "Join the parts by more than a point, or move them apart."),
  CONTACT("facets-meet", "Join the parts by a union, or move one so that they stay clear of each other."),
  INSIDE_OUT("inside-out-shell", "Turn all facets of this shell round."),
  NESTED("nested-shell", "Join the solids by a union, or cut the inner one out if it is meant as a void."),
  VOLUME("volume-not-positive", "Turn the surface right side out, or give the part some thickness.");

  private final String label;
  private final String advice;

  Rule(String label, String advice) {
    this.label = label;
    this.advice = advice;
  }

  /** Short name, lower case with dashes. */
  String label() {
    return label;
  }

  /** What to change when it is broken. */
  String advice() {
    return advice;
  }
}
