package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.profile.Region;
import outrigger.shapes.profile.Ring;

/** A text in the project's own stroke lettering, broken into lines where it is long. Sizes in pixels. */
final class Caption {
  /** Height of a letter. */
  static final double LETTER = 13;
  private static final double STROKE = 1.7;
  /** From one line to the next. */
  private static final double LEADING = 20;
  /** After these a line is broken rather than elsewhere. */
  private static final String BREAKS = "-._ ";

  private final List<String> lines;

  private Caption(List<String> lines) {
    this.lines = lines;
  }

  /** A text of any characters, those that the lettering lacks as dashes, in lines no wider than room if they can be. */
  static Caption of(String text, double room) {
    List<String> lines = new ArrayList<>();
    String rest = text.replaceAll("[^A-Za-z0-9 +\\-.,/()#:]", "-").strip();
    while (!rest.isEmpty()) {
      int end = end(rest, room);
      lines.add(rest.substring(0, end).stripTrailing());
      rest = rest.substring(end).strip();
    }
    return new Caption(lines);
  }

  /** Where the first line of a text ends. */
  private static int end(String text, double room) {
    int fits = 1;
    while (fits < text.length() && width(text.substring(0, fits + 1)) <= room) {
      fits++;
    }
    for (int end = fits; end > 1 && fits < text.length(); end--) {
      if (BREAKS.indexOf(text.charAt(end - 1)) >= 0) {
        return end;
      }
    }
    return fits;
  }

  private static double width(String line) {
    return Profile.textWidth(line, LETTER, STROKE);
  }

  double width() {
    return lines.stream().mapToDouble(Caption::width).max().orElse(0);
  }

  double height() {
    return lines.isEmpty() ? 0 : LETTER + LEADING * (lines.size() - 1);
  }

  /** Set with its upper edge at y, each line beginning at x. */
  Mark from(double x, double y) {
    return about(x + width() / 2, y);
  }

  /** Set with its upper edge at y, each line about the middle x. */
  Mark about(double x, double y) {
    List<double[]> loops = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      for (Region region : Profile.text(line, LETTER, STROKE).regions()) {
        double left = x - width(line) / 2;
        double baseline = y + LETTER + i * LEADING;
        loops.add(loop(region.shell(), left, baseline));
        region.holes().forEach(hole -> loops.add(loop(hole, left, baseline)));
      }
    }
    return canvas -> canvas.fill(loops, Tone.INK);
  }

  private static double[] loop(Ring ring, double left, double baseline) {
    double[] loop = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      loop[2 * i] = left + Grid.toMm(ring.x(i));
      loop[2 * i + 1] = baseline - Grid.toMm(ring.y(i));
    }
    return loop;
  }
}
