package outrigger.generator.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Normals;

/** A mesh at its place: facets turned to the eye, shaded by how they stand, then the lines that tell its shape. */
final class Figure implements Mark {
  /** Cosine of the angle between facets from which their edge is drawn: 25 degrees. Flats of round walls turn less. */
  private static final double SHARP = StrictMath.cos(Math.toRadians(25));

  /** Height over their common edge below which two facets show no crease, pixels: lines side by side would hide colours. */
  private static final double FINE = 4;

  /** How much nearer to the eye than its facet the last spot lies, pixels. */
  private static final double NEARER = 0.3;

  private final Mesh mesh;
  private final double[][] pixels;
  private final double[][] normals;
  private final View view;
  private final double scale;
  private final double left;
  private final double top;
  private final Paint paint;
  private final List<Line> lines = new ArrayList<>();

  /** Between two vertices. */
  private record Line(int from, int to) {}

  /** Seen at a scale in pixels a millimetre, the upper left corner of its box at (x, y). */
  Figure(Mesh mesh, View view, double scale, double x, double y) {
    this(mesh, view, scale, x, y, Paint.NONE);
  }

  /** The same in colours. */
  Figure(Mesh mesh, View view, double scale, double x, double y, Paint paint) {
    this.mesh = mesh;
    this.view = view;
    this.paint = paint;
    this.scale = scale;
    left = x;
    top = y;
    pixels = new double[mesh.vertexCount()][];
    for (int v = 0; v < pixels.length; v++) {
      pixels[v] = view.pixel(mesh, v, scale, x, y);
    }
    normals = new double[mesh.facetCount()][];
    for (int f = 0; f < normals.length; f++) {
      normals[f] = normal(f);
    }
    findLines();
  }

  private void findLines() {
    Map<Long, Integer> facetOfEdge = new HashMap<>();
    for (int f = 0; f < normals.length; f++) {
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(f, k);
        int b = mesh.corner(f, (k + 1) % 3);
        Integer other = facetOfEdge.put((long) Math.min(a, b) << 32 | Math.max(a, b), f);
        if (other != null && isLine(a, b, f, other)) {
          lines.add(new Line(a, b));
        }
      }
    }
  }

  /** Whether facets meet in the outline, where a surface turns from the eye, or in a crease that is seen and not fine. */
  private boolean isLine(int a, int b, int f, int g) {
    return isOutline(f, g) || view.isFacing(normals[f]) && Vectors.dot(normals[f], normals[g]) < SHARP
        && !(isFine(a, b, f) && isFine(a, b, g));
  }

  private boolean isOutline(int f, int g) {
    return view.isFacing(normals[f]) != view.isFacing(normals[g]);
  }

  /** Whether a facet is seen as a strip along its edge that is hardly wider than a line. */
  private boolean isFine(int a, int b, int f) {
    double[] p = pixels[a];
    double[] q = pixels[b];
    double most = 0;
    for (int k = 0; k < 3; k++) {
      double[] r = pixels[mesh.corner(f, k)];
      most = Math.max(most, Math.abs((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])));
    }
    return most < FINE * Math.hypot(q[0] - p[0], q[1] - p[1]);
  }

  private double[] normal(int f) {
    double[] n = Normals.doubled(mesh, f);
    return Vectors.unit(n[0], n[1], n[2]);
  }

  @Override
  public void draw(Canvas canvas) {
    for (int f = 0; f < normals.length; f++) {
      if (view.isFacing(normals[f])) {
        canvas.triangle(pixels[mesh.corner(f, 0)], pixels[mesh.corner(f, 1)], pixels[mesh.corner(f, 2)],
            view.tone(normals[f]), paint.hue(f));
        drawSpots(canvas, f);
      }
    }
    for (Line line : lines) {
      canvas.line(pixels[line.from], pixels[line.to], Tone.LINE);
    }
  }

  /** Lays the spots of a facet on it, each a hair nearer to the eye than the one before. */
  private void drawSpots(Canvas canvas, int f) {
    List<FacetField.Place> spots = paint.spots(f);
    for (int i = 0; i < spots.size(); i++) {
      List<double[]> disc = Disc.on(spots.get(i), normals[f], corner(f, 0), corner(f, 1), corner(f, 2));
      double nearer = NEARER * (i + 1) / spots.size();
      for (int k = 2; k < disc.size(); k++) {
        canvas.triangle(pixel(disc.get(0), nearer), pixel(disc.get(k - 1), nearer), pixel(disc.get(k), nearer),
            view.tone(normals[f]), paint.hueOf(spots.get(i)));
      }
    }
  }

  private double[] pixel(double[] place, double nearer) {
    double[] pixel = view.pixelOf(place, scale, left, top);
    pixel[2] += nearer;
    return pixel;
  }

  private double[] corner(int f, int k) {
    int v = mesh.corner(f, k);
    return new double[] {Grid.toMm(mesh.x(v)), Grid.toMm(mesh.y(v)), Grid.toMm(mesh.z(v))};
  }
}
