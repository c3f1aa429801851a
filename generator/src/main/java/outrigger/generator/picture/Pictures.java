package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** Lays parts out in rows, all to one scale, each over its name, with a bar of 10 mm below, and draws them. */
public final class Pictures {
  private static final int PAPER = 0xfaf8f3;
  private static final int INK = 0x38342e;
  private static final int MARGIN = 36;
  private static final double LETTER = 13;
  /** Most pixels a millimetre gets, and the least. */
  private static final double LARGEST_SCALE = 24;
  private static final double LEAST_SCALE = 0.2;

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

  /** One part, at most 900 pixels wide, as PNG. */
  public static byte[] one(Shown part) {
    return new Pictures(List.of(part), 900).draw();
  }

  /** Several parts on one sheet, at most 1500 pixels wide, as PNG; at least one. */
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
      double w = Math.max(views.get(i).width() * scale, textWidth(parts.get(i).name()));
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
    double height = MARGIN + LETTER + MARGIN;
    for (Row row : rows) {
      height += row.height + LETTER + 1.5 * MARGIN;
    }
    double right = 0;
    for (Row row : rows) {
      Cell end = row.cells.get(row.cells.size() - 1);
      right = Math.max(right, end.x + end.width);
    }
    Canvas canvas = new Canvas((int) Math.ceil(right + MARGIN), (int) Math.ceil(height), PAPER);
    double y = MARGIN;
    for (Row row : rows) {
      for (Cell cell : row.cells) {
        View view = views.get(cell.part);
        new Drawing(canvas, parts.get(cell.part).mesh().mesh(), view, scale,
            cell.x + (cell.width - view.width() * scale) / 2, y + row.height - view.height() * scale).draw();
        String name = parts.get(cell.part).name();
        write(canvas, letters(name), cell.x + (cell.width - textWidth(name)) / 2, y + row.height + MARGIN * 0.4 + LETTER);
      }
      y += row.height + LETTER + 1.5 * MARGIN;
    }
    drawBar(canvas, y + LETTER);
    return canvas.png();
  }

  /** The bar that sizes are judged by. */
  private void drawBar(Canvas canvas, double y) {
    double end = MARGIN + 10 * scale;
    for (double[] ends : new double[][] {{MARGIN, y, end, y}, {MARGIN, y - 5, MARGIN, y + 5}, {end, y - 5, end, y + 5}}) {
      canvas.line(new double[] {ends[0], ends[1], 0}, new double[] {ends[2], ends[3], 0}, 0, INK);
    }
    write(canvas, "10 mm", end + 12, y + LETTER / 2);
  }

  private static String letters(String text) {
    return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9 +\\-.,/()#:]", "-");
  }

  private static double textWidth(String text) {
    return Profile.textWidth(letters(text), LETTER, LETTER / 8);
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
