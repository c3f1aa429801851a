package outrigger.shapes.print.facet;

import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/** A place or direction in space, mm. */
public record Vec(double x, double y, double z) {
  /** The middle of three places. */
  public static Vec middle(Vec a, Vec b, Vec c) {
    return a.plus(b, 1).plus(c, 1).times(1 / 3.0);
  }

  /** Where a vertex of a mesh lies, mm. */
  public static Vec of(Mesh mesh, int vertex) {
    return new Vec(Grid.toMm(mesh.x(vertex)), Grid.toMm(mesh.y(vertex)), Grid.toMm(mesh.z(vertex)));
  }

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

  /** A vector of length 1 the same way. */
  public Vec unit() {
    return times(1 / length());
  }

  /** How far another place lies off, mm. */
  public double distance(Vec v) {
    return minus(v).length();
  }
}
