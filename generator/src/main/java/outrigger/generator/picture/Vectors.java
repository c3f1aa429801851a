package outrigger.generator.picture;

/** Directions of three components. */
final class Vectors {
  private Vectors() {}

  static double[] unit(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length};
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
