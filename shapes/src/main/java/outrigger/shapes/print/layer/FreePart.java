package outrigger.shapes.print.layer;

import outrigger.shapes.profile.Section;

/**
 * What of a piece is held at one end at most; mm.
 *
 * @param share its part of the piece's area, 0 to 1
 * @param minX of the box it lies in
 * @param minY of the box it lies in
 * @param maxX of the box it lies in
 * @param maxY of the box it lies in
 */
public record FreePart(double share, double minX, double minY, double maxX, double maxY) {
  /** Nothing. */
  static final FreePart NONE = new FreePart(0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

  /** All of a piece. */
  static FreePart all(Section piece) {
    return new FreePart(1, piece.minX(), piece.minY(), piece.maxX(), piece.maxY());
  }

  /** A part of a piece. */
  static FreePart of(Section part, Section piece) {
    return part.isEmpty() ? all(piece)
        : new FreePart(part.area() / piece.area(), part.minX(), part.minY(), part.maxX(), part.maxY());
  }

  /** What lines laid in one direction leave. */
  static FreePart of(Chords chords, Rim rim) {
    FreePart part = new FreePart(1 - chords.share(), NONE.minX, NONE.minY, NONE.maxX, NONE.maxY);
    for (int i = 0; i < chords.looseLines().size(); i += 2) {
      part = part.reaching(chords.looseLines().get(i), chords.looseLines().get(i + 1));
    }
    for (int e = 0; e < rim.size(); e++) {
      if (chords.endAt(rim, e)) {
        part = part.reaching(rim.x0(e), rim.y0(e)).reaching(rim.x1(e), rim.y1(e));
      }
    }
    return part;
  }

  private FreePart reaching(double x, double y) {
    return new FreePart(share, Math.min(minX, x), Math.min(minY, y), Math.max(maxX, x), Math.max(maxY, y));
  }

  /** The same with one more part of the piece. */
  FreePart with(double more, Rim rim) {
    double[] x = rim.extent(1, 0);
    double[] y = rim.extent(0, 1);
    return new FreePart(share + more, minX, minY, maxX, maxY).reaching(x[0], y[0]).reaching(x[1], y[1]);
  }
}
