package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.PrintReport;

/**
 * A part seen from above and below, once for each field in its colours, with a legend of numbers; the places of concerns
 * carry numbers that are explained below. Sizes in pixels.
 */
final class MapPage {
  private static final int WIDTH = 1200;
  private static final double MARGIN = 36;
  private static final double LARGEST_SCALE = 40;
  private static final double TALLEST = 520;
  private static final double LINE = 24;
  /** Widest line of text. */
  private static final double ROOM = 900;
  private static final double SWATCH = 15;
  /** Room of a number. */
  private static final double TAG = 22;
  /** Concerns that are numbered. */
  private static final int NUMBERED = 20;

  private final String name;
  private final Mesh mesh;
  private final PrintReport report;
  private final View above;
  private final View below;
  private final double scale;

  MapPage(Shown part, PrintReport report) {
    this.name = part.name();
    this.mesh = part.mesh().mesh();
    this.report = report;
    above = new View(mesh);
    below = new View(mesh, true);
    double wide = (WIDTH - 3 * MARGIN) / (above.width() + below.width());
    double tall = TALLEST / Math.max(above.height(), below.height());
    scale = Math.min(LARGEST_SCALE, Math.min(wide, tall));
  }

  byte[] draw() {
    List<Strip> strips = new ArrayList<>();
    for (FacetField field : report.fields()) {
      Scale classes = new Scale(field);
      strips.add(views(name + ": " + field.name().replace('-', ' '), classes));
      strips.add(legend(classes));
    }
    strips.add(concerns());
    strips.add(bar());
    Png png = new Png(WIDTH, strips.stream().mapToInt(Strip::height).sum(), true);
    strips.forEach(strip -> strip.drawOn(png, WIDTH));
    return png.bytes();
  }

  /** Both views in a field's colours under a heading. */
  private Strip views(String heading, Scale classes) {
    Caption title = Caption.of(heading, ROOM);
    double under = MARGIN + title.height() + LINE / 2;
    double top = under + LINE;
    double height = scale * Math.max(above.height(), below.height());
    double right = 2 * MARGIN + scale * above.width();
    return new Strip((int) Math.ceil(top + height + LINE), () -> {
      List<Mark> marks = new ArrayList<>();
      marks.add(title.from(MARGIN, MARGIN));
      marks.add(Caption.of("from above", ROOM).from(MARGIN, under));
      marks.add(Caption.of("from below", ROOM).from(right, under));
      marks.add(new Figure(mesh, above, scale, MARGIN, top, classes));
      marks.add(new Figure(mesh, below, scale, right, top, classes));
      List<double[]> taken = new ArrayList<>();
      for (int i = 0; i < Math.min(NUMBERED, report.concerns().size()); i++) {
        Concern c = report.concerns().get(i);
        double[] place = {c.x(), c.y(), c.z()};
        marks.add(tag(i + 1, apart(above.pixelOf(place, scale, MARGIN, top), taken)));
        marks.add(tag(i + 1, apart(below.pixelOf(place, scale, right, top), taken)));
      }
      return marks;
    });
  }

  /** Moves a tag to the right until none taken is too near, and takes its place. */
  static double[] apart(double[] at, List<double[]> taken) {
    double[] free = at;
    for (int i = 0; i < taken.size(); i++) {
      double[] other = taken.get(i);
      // asked as it is moved below, so that it is never moved to where it stands
      if (free[0] < other[0] + TAG && free[0] > other[0] - TAG && Math.abs(other[1] - free[1]) < TAG) {
        free = new double[] {other[0] + TAG, free[1]};
        i = -1;
      }
    }
    taken.add(free);
    return free;
  }

  /** A number on a light plate. */
  private static Mark tag(int number, double[] at) {
    Caption words = Caption.of(String.valueOf(number), ROOM);
    double half = words.width() / 2 + 4;
    double tall = Caption.LETTER / 2 + 4;
    double[] plate = {at[0] - half, at[1] - tall, at[0] + half, at[1] - tall, at[0] + half, at[1] + tall,
        at[0] - half, at[1] + tall};
    Mark text = words.about(at[0], at[1] - Caption.LETTER / 2);
    return canvas -> {
      canvas.fill(List.of(plate), Tone.PAPER);
      text.draw(canvas);
    };
  }

  private static Strip legend(Scale classes) {
    List<String> words = classes.words();
    return new Strip((int) Math.ceil(LINE * (words.size() + 1)), () -> {
      List<Mark> marks = new ArrayList<>();
      for (int i = 0; i < words.size(); i++) {
        int hue = i + 1;
        double y = LINE * i;
        double[] box = {MARGIN, y, MARGIN + 2 * SWATCH, y, MARGIN + 2 * SWATCH, y + SWATCH, MARGIN, y + SWATCH};
        marks.add(canvas -> canvas.fill(List.of(box), Tone.PAPER, hue));
        marks.add(Caption.of(words.get(i), ROOM).from(MARGIN + 3 * SWATCH, y));
      }
      return marks;
    });
  }

  private Strip concerns() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < Math.min(NUMBERED, report.concerns().size()); i++) {
      Concern c = report.concerns().get(i);
      lines.add(String.format(Locale.ROOT, "%d: %s %s at (%.1f, %.1f, %.1f): %.2f, limit %.2f %s", i + 1,
          c.severity().name().toLowerCase(Locale.ROOT), c.rule(), c.x(), c.y(), c.z(), c.measured(), c.bound(),
          c.limit().unit()));
    }
    if (report.concerns().size() > NUMBERED) {
      lines.add("and " + (report.concerns().size() - NUMBERED) + " more");
    }
    lines.add(lines.isEmpty() ? "no concern" : "The numbers mark the places, seen through the part.");
    lines.add("A small triangle has the colour of its worst place.");
    return new Strip((int) Math.ceil(LINE * (lines.size() + 1)), () -> {
      List<Mark> marks = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        marks.add(Caption.of(lines.get(i), ROOM).from(MARGIN, LINE * i));
      }
      return marks;
    });
  }

  private Strip bar() {
    ScaleBar bar = new ScaleBar(scale);
    return new Strip((int) Math.ceil(MARGIN + LINE + bar.height()), () -> List.of(bar.at(MARGIN, LINE)));
  }
}
