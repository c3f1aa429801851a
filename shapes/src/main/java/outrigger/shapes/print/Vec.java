package outrigger.shapes.print;

/** A place or direction in space, mm. */
record Vec(double x, double y, double z) {
  Vec plus(Vec v, double times) {
    return new Vec(x + times * v.x, y + times * v.y, z + times * v.z);
  }

  Vec minus(Vec v) {
    return new Vec(x - v.x, y - v.y, z - v.z);
  }

  Vec times(double k) {
    return new Vec(k * x, k * y, k * z);
  }

  double dot(Vec v) {
    return x * v.x + y * v.y + z * v.z;
  }

  Vec cross(Vec v) {
    return new Vec(y * v.z - z * v.y, z * v.x - x * v.z, x * v.y - y * v.x);
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  double distance(Vec v) {
    return minus(v).length();
  }
}
