package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;

/** Parts in rows, all to one scale, each over its name, and the scale's bar below. Sizes in pixels. */
final class Page {
  private static final double MARGIN = 36;
  /** Between a part and its name. */
  private static final double GAP = 16;
  /** Least width a name gets before it is broken. */
  private static final double NAME = 210;
  /** Most pixels a millimetre gets. */
  private static final double LARGEST_SCALE = 40;
  /** What the widest part gets at least, however many there are. */
  private static final double SMALLEST_PART = 120;
  /** Share of a square page that parts' boxes are to fill. */
  private static final double FILLED = 0.42;

  private final double room;
  private final double scale;
  private final List<Cell> cells = new ArrayList<>();

  /** A part and its place across the page. */
  private record Cell(Shown part, View view, Caption name, double width) {}

  /** @param width of the page at most */
  Page(List<Shown> parts, int width) {
    room = width - 2 * MARGIN;
    List<View> views = parts.stream().map(part -> new View(part.mesh().mesh())).toList();
    scale = scale(views, width);
    for (int i = 0; i < views.size(); i++) {
      double seen = views.get(i).width() * scale;
      Caption name = Caption.of(parts.get(i).name(), Math.max(seen, NAME));
      cells.add(new Cell(parts.get(i), views.get(i), name, Math.max(seen, name.width())));
    }
  }

  private double scale(List<View> views, int width) {
    double widest = views.stream().mapToDouble(view -> Math.max(view.width(), view.height())).max().orElseThrow();
    double area = views.stream().mapToDouble(view -> view.width() * view.height()).sum();
    double wanted = Math.max(SMALLEST_PART / widest, Math.sqrt(FILLED * width * width / area));
    return Math.min(LARGEST_SCALE, Math.min(room / widest, wanted));
  }

  byte[] draw() {
    List<List<Cell>> rows = rows();
    ScaleBar bar = new ScaleBar(scale);
    double widest = Math.max(bar.width(), rows.stream().mapToDouble(Page::width).max().orElseThrow());
    int width = (int) Math.ceil(2 * MARGIN + widest);
    List<Strip> strips = new ArrayList<>(rows.stream().map(this::strip).toList());
    strips.add(new Strip((int) Math.ceil(2 * MARGIN + bar.height()), () -> List.of(bar.at(MARGIN, MARGIN))));
    Png png = new Png(width, strips.stream().mapToInt(Strip::height).sum());
    strips.forEach(strip -> strip.drawOn(png, width));
    return png.bytes();
  }

  private List<List<Cell>> rows() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Cell cell : cells) {
      if (rows.isEmpty() || width(rows.get(rows.size() - 1)) + MARGIN + cell.width > room) {
        rows.add(new ArrayList<>());
      }
      rows.get(rows.size() - 1).add(cell);
    }
    return rows;
  }

  private static double width(List<Cell> row) {
    return row.stream().mapToDouble(Cell::width).sum() + MARGIN * (row.size() - 1);
  }

  /** A row of parts on one line, names below it. */
  private Strip strip(List<Cell> row) {
    double line = MARGIN + scale * row.stream().mapToDouble(cell -> cell.view.height()).max().orElseThrow();
    double names = row.stream().mapToDouble(cell -> cell.name.height()).max().orElseThrow();
    return new Strip((int) Math.ceil(line + GAP + names), () -> {
      List<Mark> marks = new ArrayList<>();
      double x = MARGIN;
      for (Cell cell : row) {
        double middle = x + cell.width / 2;
        marks.add(new Figure(cell.part.mesh().mesh(), cell.view, scale, middle - cell.view.width() * scale / 2,
            line - cell.view.height() * scale));
        marks.add(cell.name.about(middle, line + GAP));
        x += cell.width + MARGIN;
      }
      return marks;
    });
  }
}
