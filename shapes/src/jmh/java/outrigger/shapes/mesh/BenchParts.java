package outrigger.shapes.mesh;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import outrigger.shapes.check.Proof;
import outrigger.shapes.stl.StlWriter;

/** The parts that are timed, as lines of text: see {@link ReferencePart}. */
final class BenchParts {
  private static final int HOLE_SIDES = 24;
  private static final double SPHERE_RADIUS_UM = 40_000;

  private BenchParts() {}

  /**
   * The text of a part.
   *
   * @param name a reference part, {@code plate-N} with N round holes in a square plate, {@code sphere-N} of about N facets,
   *     or {@code spheres-N}, one sphere of about N facets cut from another, their centres off every axis
   */
  static String text(String name) throws IOException {
    int dash = name.lastIndexOf('-');
    if (name.startsWith("plate-")) {
      return plate(Integer.parseInt(name.substring(dash + 1)));
    }
    if (name.startsWith("sphere-")) {
      return "M 0 " + sphere(Integer.parseInt(name.substring(dash + 1)), 0, 0, 0) + "\n";
    }
    if (name.startsWith("spheres-")) {
      int facets = Integer.parseInt(name.substring(dash + 1));
      return "M 0 " + sphere(facets, 0, 0, 0) + "\nM 1 " + sphere(facets, 13_123, 7_457, 5_789) + "\nD 2 2 0 1\n";
    }
    return resource(name);
  }

  private static String resource(String name) throws IOException {
    try (InputStream plain = BenchParts.class.getResourceAsStream(name + ".ops");
        InputStream packed = BenchParts.class.getResourceAsStream(name + ".ops.gz")) {
      if (plain == null && packed == null) {
        throw new IOException("there is no part " + name);
      }
      InputStream in = plain != null ? plain : new GZIPInputStream(packed);
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
    }
  }

  /** Everything from operands to the bytes of the file, the proof included. */
  static byte[] bytes(ReferencePart part) {
    return StlWriter.bytes(Proof.of(part::mesh).proven().orElseThrow(), "benchmark");
  }

  static byte[] bytes(Mesh mesh) {
    return StlWriter.bytes(Proof.judge(mesh).proven().orElseThrow(), "benchmark");
  }

  /** Holes of 3.2 mm, 5 mm apart, through a plate 3 mm thick. */
  private static String plate(int holes) {
    int side = (int) Math.ceil(Math.sqrt(holes));
    int edge = 5_000 * side + 2_000;
    StringBuilder text = new StringBuilder();
    text.append(String.format(Locale.ROOT, "P 0 Z 0 3000 1 4 0 0 %d 0 %d %d 0 %d%n", edge, edge, edge, edge));
    StringBuilder whole = new StringBuilder("D ").append(holes + 1).append(' ').append(holes + 1).append(" 0");
    for (int i = 0; i < holes; i++) {
      text.append("P ").append(i + 1).append(" Z -1000 4000 1 ").append(HOLE_SIDES);
      for (int k = 0; k < HOLE_SIDES; k++) {
        double a = 2 * Math.PI * k / HOLE_SIDES;
        text.append(' ').append(Math.round(3_500 + 5_000L * (i % side) + 1_600 * StrictMath.cos(a)));
        text.append(' ').append(Math.round(3_500 + 5_000L * (i / side) + 1_600 * StrictMath.sin(a)));
      }
      text.append('\n');
      whole.append(' ').append(i + 1);
    }
    return text.append(whole).append('\n').toString();
  }

  /** Vertices and facets of a sphere of meridians and parallels, twice as many of the former. */
  private static String sphere(int facets, int x, int y, int z) {
    int rings = (int) Math.round((1 + Math.sqrt(1 + facets)) / 2);
    int sides = 2 * rings;
    int vertices = (rings - 1) * sides + 2;
    StringBuilder text = new StringBuilder().append(vertices).append(' ').append(2 * sides * (rings - 1));
    append(text, x, y, z - SPHERE_RADIUS_UM);
    for (int r = 1; r < rings; r++) {
      double polar = Math.PI * r / rings;
      for (int s = 0; s < sides; s++) {
        double a = 2 * Math.PI * s / sides;
        append(text, x + SPHERE_RADIUS_UM * StrictMath.sin(polar) * StrictMath.cos(a),
            y + SPHERE_RADIUS_UM * StrictMath.sin(polar) * StrictMath.sin(a), z - SPHERE_RADIUS_UM * StrictMath.cos(polar));
      }
    }
    append(text, x, y, z + SPHERE_RADIUS_UM);
    for (int s = 0; s < sides; s++) {
      int next = (s + 1) % sides;
      facet(text, 0, 1 + next, 1 + s);
      for (int r = 0; r + 2 < rings; r++) {
        int low = 1 + r * sides;
        facet(text, low + s, low + next, low + sides + next);
        facet(text, low + s, low + sides + next, low + sides + s);
      }
      facet(text, vertices - 1, vertices - 1 - sides + s, vertices - 1 - sides + next);
    }
    return text.toString();
  }

  private static void append(StringBuilder text, double x, double y, double z) {
    text.append(' ').append(Math.round(x)).append(' ').append(Math.round(y)).append(' ').append(Math.round(z));
  }

  private static void facet(StringBuilder text, int a, int b, int c) {
    text.append(' ').append(a).append(' ').append(b).append(' ').append(c);
  }
}
