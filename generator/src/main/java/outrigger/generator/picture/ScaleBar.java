package outrigger.generator.picture;

import java.math.BigDecimal;

/** The bar that sizes are judged by: 1, 2 or 5 times a power of ten millimetres long. */
final class ScaleBar {
  /** Longest bar, pixels. */
  private static final double LONGEST = 200;
  private static final double TICK = 5;
  private static final double GAP = 12;

  private final double length;
  private final Caption words;

  /** The longest bar there is room for at a scale in pixels a millimetre. */
  ScaleBar(double scale) {
    BigDecimal mm = longest(LONGEST / scale);
    length = mm.doubleValue() * scale;
    words = Caption.of(mm.toPlainString() + " mm", Double.MAX_VALUE);
  }

  private static BigDecimal longest(double room) {
    BigDecimal best = BigDecimal.ONE.movePointLeft(9);
    for (int power = -9; power < 9; power++) {
      for (int digit : new int[] {1, 2, 5}) {
        BigDecimal candidate = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
        best = candidate.doubleValue() <= room ? candidate : best;
      }
    }
    return best;
  }

  double width() {
    return length + GAP + words.width();
  }

  double height() {
    return Caption.LETTER;
  }

  /** With its left end at x and its upper edge at y. */
  Mark at(double x, double y) {
    double middle = y + height() / 2;
    double end = x + length;
    Mark text = words.about(end + GAP + words.width() / 2, y);
    return canvas -> {
      line(canvas, x, middle, end, middle);
      line(canvas, x, middle - TICK, x, middle + TICK);
      line(canvas, end, middle - TICK, end, middle + TICK);
      text.draw(canvas);
    };
  }

  private static void line(Canvas canvas, double x1, double y1, double x2, double y2) {
    canvas.line(new double[] {x1, y1, 0}, new double[] {x2, y2, 0}, Tone.INK);
  }
}
