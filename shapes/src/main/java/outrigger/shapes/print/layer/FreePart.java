package outrigger.shapes.print.layer;

import outrigger.shapes.print.slice.FlatBox;
import outrigger.shapes.profile.Section;

/**
 * What of a piece is held at one end at most; mm.
 *
 * @param share its part of the piece's area, 0 to 1
 * @param box that it lies in
 */
public record FreePart(double share, FlatBox box) {
  /** Nothing. */
  static final FreePart NONE = new FreePart(0, FlatBox.NONE);

  /** All of a piece. */
  static FreePart all(Section piece) {
    return new FreePart(1, FlatBox.of(piece));
  }

  /** What lines laid in one direction leave. */
  static FreePart of(Chords chords, Rim rim) {
    FlatBox box = FlatBox.NONE;
    for (int i = 0; i < chords.looseLines().size(); i += 2) {
      box = box.with(chords.looseLines().get(i), chords.looseLines().get(i + 1));
    }
    for (int e = 0; e < rim.size(); e++) {
      if (chords.endAt(rim, e)) {
        box = box.with(rim.x0(e), rim.y0(e)).with(rim.x1(e), rim.y1(e));
      }
    }
    return new FreePart(1 - chords.share(), box);
  }

  /** The same with one more part of the piece. */
  FreePart with(double more, Rim rim) {
    double[] x = rim.extent(1, 0);
    double[] y = rim.extent(0, 1);
    return new FreePart(share + more, box.with(x[0], y[0]).with(x[1], y[1]));
  }
}
