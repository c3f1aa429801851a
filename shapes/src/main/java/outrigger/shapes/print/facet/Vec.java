package outrigger.shapes.print.facet;

/** A place or direction in space, mm. */
public record Vec(double x, double y, double z) {
  /** This and another so many times. */
  public Vec plus(Vec v, double times) {
    return new Vec(x + times * v.x, y + times * v.y, z + times * v.z);
  }

  /** This less another. */
  public Vec minus(Vec v) {
    return new Vec(x - v.x, y - v.y, z - v.z);
  }

  /** This so many times as long. */
  public Vec times(double k) {
    return new Vec(k * x, k * y, k * z);
  }

  /** The scalar product, mm^2 of two places. */
  public double dot(Vec v) {
    return x * v.x + y * v.y + z * v.z;
  }

  /** The vector product. */
  public Vec cross(Vec v) {
    return new Vec(y * v.z - z * v.y, z * v.x - x * v.z, x * v.y - y * v.x);
  }

  /** Its length, mm. */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /** How far another place lies off, mm. */
  public double distance(Vec v) {
    return minus(v).length();
  }
}
