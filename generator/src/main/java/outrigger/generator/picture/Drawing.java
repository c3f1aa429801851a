package outrigger.generator.picture;

import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.mesh.Mesh;

/** Draws one mesh: facets shaded by how they stand to two lights, then the creases between them. */
final class Drawing {
  /** From above and in front: tops are lightest, fronts next, right sides darkest, so that the three tell apart. */
  private static final double[] KEY_LIGHT = unit(0.1, -0.55, 0.9);
  private static final double[] FILL_LIGHT = unit(0.9, 0.4, 0.25);
  private static final double AMBIENT = 0.48;
  private static final double KEY = 0.52;
  private static final double FILL = 0.1;
  private static final double[] MATERIAL = {232, 224, 208};
  private static final int CREASE = 0x4a4640;
  /** Cosine of the angle between facets from which their edge is drawn: 25 degrees. */
  private static final double SHARP = StrictMath.cos(Math.toRadians(25));
  /** How far behind the surface a crease may lie and still show, pixels. */
  private static final double SLACK = 0.6;

  private final Canvas canvas;
  private final Mesh mesh;
  private final View view;
  private final double scale;
  private final double x;
  private final double y;

  Drawing(Canvas canvas, Mesh mesh, View view, double scale, double x, double y) {
    this.canvas = canvas;
    this.mesh = mesh;
    this.view = view;
    this.scale = scale;
    this.x = x;
    this.y = y;
  }

  void draw() {
    double[][] normals = new double[mesh.facetCount()][];
    for (int f = 0; f < normals.length; f++) {
      normals[f] = normal(f);
      if (View.facing(normals[f]) > 0) {
        canvas.triangle(pixel(f, 0), pixel(f, 1), pixel(f, 2), shade(normals[f]));
      }
    }
    Map<Long, Integer> facetOfEdge = new HashMap<>();
    for (int f = 0; f < normals.length; f++) {
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(f, k);
        int b = mesh.corner(f, (k + 1) % 3);
        Integer other = facetOfEdge.put((long) Math.min(a, b) << 32 | Math.max(a, b), f);
        if (other != null && isCrease(normals[f], normals[other])) {
          canvas.line(pixel(f, k), pixel(f, (k + 1) % 3), SLACK, CREASE);
        }
      }
    }
  }

  /** An edge between facets that turn sharply, or the rim of what can be seen. */
  private static boolean isCrease(double[] n, double[] m) {
    return View.dot(n, m) < SHARP && (View.facing(n) > 0 || View.facing(m) > 0);
  }

  private double[] pixel(int f, int k) {
    return view.pixel(mesh.corner(f, k), scale, x, y);
  }

  private double[] normal(int f) {
    int a = mesh.corner(f, 0);
    int b = mesh.corner(f, 1);
    int c = mesh.corner(f, 2);
    double ux = mesh.x(b) - mesh.x(a);
    double uy = mesh.y(b) - mesh.y(a);
    double uz = mesh.z(b) - mesh.z(a);
    double vx = mesh.x(c) - mesh.x(a);
    double vy = mesh.y(c) - mesh.y(a);
    double vz = mesh.z(c) - mesh.z(a);
    return unit(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
  }

  private static double[] unit(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length};
  }

  private static int shade(double[] normal) {
    double light = AMBIENT + KEY * Math.max(0, View.dot(normal, KEY_LIGHT))
        + FILL * Math.max(0, View.dot(normal, FILL_LIGHT));
    int rgb = 0;
    for (double channel : MATERIAL) {
      rgb = rgb << 8 | (int) Math.min(255, channel * light);
    }
    return rgb;
  }
}
