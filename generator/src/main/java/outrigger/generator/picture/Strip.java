package outrigger.generator.picture;

import java.util.List;
import java.util.function.Supplier;

/**
 * A piece of a page over its whole width.
 *
 * @param height pixels, at least 1
 * @param marks what is on it, its upper edge at y = 0; made only when it is drawn, and dropped after
 */
record Strip(int height, Supplier<List<Mark>> marks) {
  /** Rows drawn at once, which bounds the memory that a page takes. */
  private static final int BAND = 128;

  /** Draws the strip below what a picture has so far. */
  void drawOn(Png png, int width) {
    List<Mark> drawn = marks.get();
    for (int top = 0; top < height; top += BAND) {
      Canvas canvas = new Canvas(width, top, Math.min(BAND, height - top));
      drawn.forEach(mark -> mark.draw(canvas));
      canvas.addTo(png);
    }
  }
}
