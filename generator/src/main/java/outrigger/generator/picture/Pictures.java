package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** Lays parts out in rows, all to one scale, each over its name, with a bar of 10 or 100 mm below, and draws them. */
public final class Pictures {
  private static final int PAPER = 0xfaf8f3;
  private static final int INK = 0x38342e;
  private static final int MARGIN = 36;
  private static final double LETTER = 13;
  /** Most pixels a millimetre gets, and the least. */
  private static final double LARGEST_SCALE = 24;
  private static final double LEAST_SCALE = 0.2;
  /** Height of the strip that holds the bar, pixels; the least length of a bar and its distance from its number. */
  private static final int BAR_HEIGHT = 2 * MARGIN + 13;
  private static final double LEAST_BAR = 16;
  private static final double BAR_GAP = 12;

  private final List<Shown> parts;
  private final List<View> views = new ArrayList<>();
  private final int width;
  private final double scale;

  private Pictures(List<Shown> parts, int width) {
    this.parts = parts;
    this.width = width;
    double widest = 0;
    double area = 0;
    for (Shown part : parts) {
      View view = new View(part.mesh().mesh());
      views.add(view);
      widest = Math.max(widest, Math.max(view.width(), view.height()));
      area += view.width() * view.height();
    }
    double byWidth = (width - 2.0 * MARGIN) / widest;
    double byArea = Math.sqrt(0.42 * width * width / area);
    scale = Math.max(LEAST_SCALE, Math.min(LARGEST_SCALE, Math.min(byWidth, byArea)));
  }

  /** One part, at most 900 pixels wide unless its name is wider, as PNG. */
  public static byte[] one(Shown part) {
    return new Pictures(List.of(part), 900).draw();
  }

  /** Several parts on one sheet, at most 1500 pixels wide unless a name is wider, as PNG; at least one. */
  public static byte[] sheet(List<Shown> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a picture of no part");
    }
    return new Pictures(List.copyOf(parts), 1500).draw();
  }

  private record Cell(int part, double x, double width) {}

  private record Row(List<Cell> cells, double height) {}

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    List<Cell> cells = new ArrayList<>();
    double x = MARGIN;
    double height = 0;
    for (int i = 0; i < parts.size(); i++) {
      double w = Math.max(views.get(i).width() * scale, textWidth(letters(parts.get(i).name())));
      if (!cells.isEmpty() && x + w > width - MARGIN) {
        rows.add(new Row(cells, height));
        cells = new ArrayList<>();
        x = MARGIN;
        height = 0;
      }
      cells.add(new Cell(i, x, w));
      x += w + MARGIN;
      height = Math.max(height, views.get(i).height() * scale);
    }
    rows.add(new Row(cells, height));
    return rows;
  }

  private byte[] draw() {
    List<Row> rows = rows();
    double right = MARGIN + barWidth();
    int high = BAR_HEIGHT;
    for (Row row : rows) {
      Cell end = row.cells.get(row.cells.size() - 1);
      right = Math.max(right, end.x + end.width);
      high += height(row);
    }
    int wide = (int) Math.ceil(right + MARGIN);
    Png png = new Png(wide, high);
    // One row at a time: fine pixels with depth of a whole sheet of many rows would not fit into memory.
    for (Row row : rows) {
      Canvas canvas = new Canvas(wide, height(row), PAPER);
      row.cells.forEach(cell -> drawCell(canvas, row, cell));
      png.add(canvas.rgb());
    }
    Canvas canvas = new Canvas(wide, BAR_HEIGHT, PAPER);
    drawBar(canvas);
    png.add(canvas.rgb());
    return png.finish();
  }

  private static int height(Row row) {
    return (int) Math.ceil(row.height + LETTER + 1.5 * MARGIN);
  }

  private void drawCell(Canvas canvas, Row row, Cell cell) {
    View view = views.get(cell.part);
    Shown part = parts.get(cell.part);
    new Drawing(canvas, part.mesh().mesh(), view, scale, cell.x + (cell.width - view.width() * scale) / 2,
        MARGIN + row.height - view.height() * scale).draw();
    String name = letters(part.name());
    write(canvas, name, cell.x + (cell.width - textWidth(name)) / 2, MARGIN + row.height + MARGIN * 0.4 + LETTER);
  }

  /** Length of the bar, mm: 10, or 100 where parts are drawn so small that 10 could not be judged by. */
  private int barLength() {
    return 10 * scale < LEAST_BAR ? 100 : 10;
  }

  private String barText() {
    return barLength() + " mm";
  }

  private double barWidth() {
    return barLength() * scale + BAR_GAP + textWidth(barText());
  }

  /** The bar that sizes are judged by. */
  private void drawBar(Canvas canvas) {
    double y = MARGIN + LETTER;
    double end = MARGIN + barLength() * scale;
    canvas.line(new double[] {MARGIN, y, 0}, new double[] {end, y, 0}, 0, INK);
    for (double x : new double[] {MARGIN, end}) {
      canvas.line(new double[] {x, y - 5, 0}, new double[] {x, y + 5, 0}, 0, INK);
    }
    write(canvas, barText(), end + BAR_GAP, y + LETTER / 2);
  }

  private static String letters(String text) {
    return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9 +\\-.,/()#:]", "-");
  }

  private static double textWidth(String text) {
    return Profile.textWidth(text, LETTER, LETTER / 8);
  }

  /** Fills stroke text as the flat top of a prism; the baseline is at y. */
  private static void write(Canvas canvas, String text, double x, double y) {
    if (text.isBlank()) {
      return;
    }
    Mesh mesh = Mesher.mesh(Prism.of(Profile.text(text, LETTER, LETTER / 8), 0, 1));
    for (int f = 0; f < mesh.facetCount(); f++) {
      double[][] p = new double[3][];
      boolean top = true;
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(f, k);
        top &= mesh.z(v) > 0;
        p[k] = new double[] {x + Grid.toMm(mesh.x(v)), y - Grid.toMm(mesh.y(v)), 0};
      }
      if (top) {
        canvas.triangle(p[0], p[1], p[2], INK);
      }
    }
  }
}
