package outrigger.generator.picture;

import java.util.Arrays;

/**
 * Pixels with depth, kept three times as fine each way as the picture they become. Coordinates are those of the
 * picture: x to the right, y downward, in its pixels; depth grows towards the eye.
 */
final class Canvas {
  private static final int FINE = 3;

  private final int width;
  private final int height;
  private final int[] color;
  private final float[] depth;

  Canvas(int width, int height, int background) {
    this.width = width * FINE;
    this.height = height * FINE;
    color = new int[this.width * this.height];
    depth = new float[this.width * this.height];
    Arrays.fill(color, background);
    Arrays.fill(depth, Float.NEGATIVE_INFINITY);
  }

  /** Fills a triangle where nothing drawn before is nearer; x, y and depth of each corner. */
  void triangle(double[] a, double[] b, double[] c, int rgb) {
    double area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    if (area == 0) {
      return;
    }
    int top = row(Math.min(a[1], Math.min(b[1], c[1])));
    int bottom = row(Math.max(a[1], Math.max(b[1], c[1])));
    int left = column(Math.min(a[0], Math.min(b[0], c[0])));
    int right = column(Math.max(a[0], Math.max(b[0], c[0])));
    for (int y = top; y <= bottom; y++) {
      double py = (y + 0.5) / FINE;
      for (int x = left; x <= right; x++) {
        double px = (x + 0.5) / FINE;
        double u = ((b[0] - px) * (c[1] - py) - (b[1] - py) * (c[0] - px)) / area;
        double v = ((c[0] - px) * (a[1] - py) - (c[1] - py) * (a[0] - px)) / area;
        if (u >= 0 && v >= 0 && u + v <= 1) {
          plot(y * width + x, (float) (u * a[2] + v * b[2] + (1 - u - v) * c[2]), rgb);
        }
      }
    }
  }

  /** Draws a line where nothing drawn before is nearer by more than a slack. */
  void line(double[] a, double[] b, double slack, int rgb) {
    int steps = 1 + (int) Math.ceil(2 * FINE * Math.hypot(b[0] - a[0], b[1] - a[1]));
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      int x = column(a[0] + t * (b[0] - a[0]));
      int y = row(a[1] + t * (b[1] - a[1]));
      float z = (float) (a[2] + t * (b[2] - a[2]) + slack);
      for (int dy = 0; dy < 2; dy++) {
        for (int dx = 0; dx < 2; dx++) {
          int at = Math.min(y + dy, height - 1) * width + Math.min(x + dx, width - 1);
          if (z >= depth[at]) {
            color[at] = rgb;
          }
        }
      }
    }
  }

  private void plot(int at, float z, int rgb) {
    if (z > depth[at]) {
      depth[at] = z;
      color[at] = rgb;
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(width - 1, (int) Math.floor(x * FINE)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(height - 1, (int) Math.floor(y * FINE)));
  }

  /** Red, green, blue of each pixel, row by row from the top: each the mean of its fine ones. */
  byte[] rgb() {
    int w = width / FINE;
    int h = height / FINE;
    byte[] rgb = new byte[3 * w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        for (int channel = 0; channel < 3; channel++) {
          rgb[3 * (y * w + x) + channel] = (byte) mean(x, y, 16 - 8 * channel);
        }
      }
    }
    return rgb;
  }

  private int mean(int x, int y, int shift) {
    int sum = 0;
    for (int dy = 0; dy < FINE; dy++) {
      for (int dx = 0; dx < FINE; dx++) {
        sum += color[(y * FINE + dy) * width + x * FINE + dx] >> shift & 255;
      }
    }
    return sum / (FINE * FINE);
  }
}
