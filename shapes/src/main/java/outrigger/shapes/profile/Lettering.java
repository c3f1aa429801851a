package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

/** Sets a line of text in the stroke font and gives its strokes their width. */
final class Lettering {
  /** Arc segments a quarter turn: strokes end in half an octagon, which keeps facets few. */
  private static final int SEGMENTS = 2;
  /** Widest stroke as a part of the height: wider ones close the gaps between a glyph's bars. */
  private static final double WIDEST = 0.25;

  private final String keys;
  private final double stroke;
  private final double unit;
  private final double gap;

  /**
   * @param height of capitals, from lower to upper edge of the ink, mm
   * @param stroke width of the strokes, mm
   */
  Lettering(String text, double height, double stroke) {
    Sizes.positive("text height", height);
    this.stroke = Sizes.positive("stroke width", stroke);
    if (text.isBlank()) {
      throw new ShapeException("text is empty", "Give at least one character to draw.");
    }
    if (stroke > WIDEST * height) {
      throw new ShapeException("stroke width is " + Sizes.mm(stroke) + ", more than a quarter of the text height of "
          + Sizes.mm(height) + ", " + Sizes.mm(WIDEST * height), "Use a thinner stroke or taller text.");
    }
    this.keys = StrokeFont.keys(text);
    this.unit = (height - stroke) / StrokeFont.CAPITAL;
    this.gap = Math.max(unit, stroke);
  }

  /** Width from the left edge of the first glyph's ink to the right edge of the last's, mm. */
  double width() {
    double x = -gap;
    for (int i = 0; i < keys.length(); i++) {
      x += advance(keys.charAt(i));
    }
    return x;
  }

  /** The ink, its left edge at x = 0 and its lower edge at y = 0. */
  List<Region> regions() {
    List<Geometry> lines = new ArrayList<>();
    double x = stroke / 2;
    for (int i = 0; i < keys.length(); i++) {
      char key = keys.charAt(i);
      for (String line : StrokeFont.strokes(key).split(" ")) {
        if (!line.isEmpty()) {
          lines.add(line(line, x));
        }
      }
      x += advance(key);
    }
    Geometry all = Overlays.FACTORY.buildGeometry(lines);
    return Overlays.buffer(all, stroke / 2 * Grid.PER_MM, SEGMENTS);
  }

  private double advance(char key) {
    return StrokeFont.width(key) * unit + stroke + gap;
  }

  private Geometry line(String digits, double x) {
    Coordinate[] points = new Coordinate[digits.length() / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(Grid.fromMm(x + unit * (digits.charAt(2 * i) - '0')),
          Grid.fromMm(stroke / 2 + unit * (digits.charAt(2 * i + 1) - '0')));
    }
    return points.length == 1 ? Overlays.FACTORY.createPoint(points[0]) : Overlays.FACTORY.createLineString(points);
  }
}
