package outrigger.generator.picture;

import java.util.Arrays;
import java.util.List;

/**
 * A band of a picture: tones with depth, three times as fine each way as the picture they become. Coordinates are those
 * of the whole picture, in its pixels: x to the right, y downward; depth grows towards the eye. What falls outside the
 * band is not drawn. One row more is kept above and below, so that a line shows the same wherever a band ends.
 */
final class Canvas {
  /** Fine pixels along a pixel. */
  static final int FINE = 3;
  private static final int OVERLAP = FINE;
  /** Fine pixels across a line. */
  private static final int PEN = 2;

  private final int width;
  private final int top;
  private final int height;
  private final byte[] tone;
  private final byte[] hue;
  private final float[] depth;

  /** An empty band. */
  Canvas(int width, int top, int rows) {
    this.width = width * FINE;
    this.top = top * FINE - OVERLAP;
    this.height = rows * FINE + 2 * OVERLAP;
    tone = new byte[this.width * this.height];
    hue = new byte[this.width * this.height];
    depth = new float[this.width * this.height];
    Arrays.fill(tone, (byte) Tone.PAPER);
    Arrays.fill(depth, Float.NEGATIVE_INFINITY);
  }

  /** x, y and depth in fine pixels of the band. */
  private record Spot(double x, double y, double z) {
    /** Twice the area of this, another and a point; exactly the negative with the two exchanged. */
    double area(Spot other, double px, double py) {
      return (x - px) * (other.y - py) - (y - py) * (other.x - px);
    }
  }

  private Spot spot(double[] p) {
    return new Spot(p[0] * FINE, p[1] * FINE - top, p[2] * FINE);
  }

  /** Fills a triangle where nothing drawn before is nearer; x, y and depth of each corner. Its edges belong to it. */
  void triangle(double[] a, double[] b, double[] c, int shade, int colour) {
    Spot[] corners = {spot(a), spot(b), spot(c)};
    double area = corners[1].area(corners[2], corners[0].x, corners[0].y);
    if (area == 0) {
      return;
    }
    double least = Math.min(corners[0].y, Math.min(corners[1].y, corners[2].y));
    double most = Math.max(corners[0].y, Math.max(corners[1].y, corners[2].y));
    int last = (int) Math.min(height - 1.0, Math.floor(most - 0.5));
    for (int y = (int) Math.max(0, Math.ceil(least - 0.5)); y <= last; y++) {
      span(corners, area, y, shade, colour);
    }
  }

  /** One row of a triangle: ends found roughly, then each pixel tried by the signs that its neighbours share. */
  private void span(Spot[] p, double area, int y, int shade, int colour) {
    double py = y + 0.5;
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    for (int k = 0; k < 3; k++) {
      Spot from = p[k];
      Spot to = p[(k + 1) % 3];
      if (Math.min(from.y, to.y) <= py && py <= Math.max(from.y, to.y)) {
        double x = from.y == to.y ? from.x : from.x + (py - from.y) / (to.y - from.y) * (to.x - from.x);
        left = Math.min(left, from.y == to.y ? Math.min(from.x, to.x) : x);
        right = Math.max(right, from.y == to.y ? Math.max(from.x, to.x) : x);
      }
    }
    int last = (int) Math.min(width - 1.0, Math.ceil(right));
    for (int x = (int) Math.max(0, Math.floor(left) - 1); x <= last; x++) {
      double u = p[1].area(p[2], x + 0.5, py) / area;
      double v = p[2].area(p[0], x + 0.5, py) / area;
      double w = p[0].area(p[1], x + 0.5, py) / area;
      float z = (float) (u * p[0].z + v * p[1].z + w * p[2].z);
      int at = y * width + x;
      if (u >= 0 && v >= 0 && w >= 0 && z > depth[at]) {
        depth[at] = z;
        tone[at] = (byte) shade;
        hue[at] = (byte) colour;
      }
    }
  }

  /** Draws a thin line where it is not hidden; x, y and depth of each end. */
  void line(double[] a, double[] b, int shade) {
    Spot from = spot(a);
    Spot to = spot(b);
    if (Math.max(from.y, to.y) < -PEN || Math.min(from.y, to.y) > height + PEN) {
      return;
    }
    double length = Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y));
    int steps = 1 + (int) Math.ceil(2 * length);
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      int x = (int) Math.floor(from.x + t * (to.x - from.x) - PEN / 2.0 + 0.5);
      int y = (int) Math.floor(from.y + t * (to.y - from.y) - PEN / 2.0 + 0.5);
      if (isSeen(x, y, from.z + t * (to.z - from.z) + 1)) {
        stamp(x, y, shade);
      }
    }
  }

  /** Whether something about the pen's place is not nearer than z: an edge has the side that falls away from it. */
  private boolean isSeen(int x, int y, double z) {
    for (int row = Math.max(0, y - 1); row <= Math.min(height - 1, y + PEN); row++) {
      for (int column = Math.max(0, x - 1); column <= Math.min(width - 1, x + PEN); column++) {
        if (depth[row * width + column] <= z) {
          return true;
        }
      }
    }
    return false;
  }

  private void stamp(int x, int y, int shade) {
    for (int row = Math.max(0, y); row < Math.min(height, y + PEN); row++) {
      for (int column = Math.max(0, x); column < Math.min(width, x + PEN); column++) {
        tone[row * width + column] = (byte) shade;
      }
    }
  }

  /** Fills closed loops, each of x and y in turn, over all drawn before; what an even number of them surrounds is left. */
  void fill(List<double[]> loops, int shade) {
    fill(loops, shade, Hue.NONE);
  }

  /** The same in a colour. */
  void fill(List<double[]> loops, int shade, int colour) {
    for (int y = 0; y < height; y++) {
      double[] ends = crossings(loops, (y + 0.5 + top) / FINE);
      for (int k = 0; k + 1 < ends.length; k += 2) {
        int from = (int) Math.max(0, Math.ceil(ends[k] * FINE - 0.5));
        int to = (int) Math.min(width, Math.ceil(ends[k + 1] * FINE - 0.5));
        if (from < to) {
          Arrays.fill(tone, y * width + from, y * width + to, (byte) shade);
          Arrays.fill(hue, y * width + from, y * width + to, (byte) colour);
        }
      }
    }
  }

  /** Where a level line meets the loops, from left to right. */
  private static double[] crossings(List<double[]> loops, double y) {
    double[] found = new double[16];
    int count = 0;
    for (double[] loop : loops) {
      for (int i = 0, j = loop.length - 2; i < loop.length; j = i, i += 2) {
        if (loop[i + 1] <= y != loop[j + 1] <= y) {
          found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
          found[count++] = loop[i] + (y - loop[i + 1]) / (loop[j + 1] - loop[i + 1]) * (loop[j] - loop[i]);
        }
      }
    }
    Arrays.sort(found, 0, count);
    return Arrays.copyOf(found, count);
  }

  /** Adds the band's rows to a picture, each pixel the mean of its fine ones. */
  void addTo(Png png) {
    byte[] row = new byte[width / FINE];
    for (int y = OVERLAP; y < height - OVERLAP; y += FINE) {
      for (int x = 0; x < row.length; x++) {
        int sum = 0;
        for (int k = 0; k < FINE * FINE; k++) {
          sum += tone[(y + k / FINE) * width + x * FINE + k % FINE] & 255;
        }
        int mean = (sum + FINE * FINE / 2) / (FINE * FINE);
        row[x] = (byte) png.colour(mean, hue[(y + FINE / 2) * width + x * FINE + FINE / 2]);
      }
      png.row(row);
    }
  }
}
