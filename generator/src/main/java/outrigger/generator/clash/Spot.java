package outrigger.generator.clash;

import outrigger.generator.accessory.Words;

/** A point in truck axes, mm: x forward of the front axle, y left of the middle, z above the rails' tops. */
public record Spot(double x, double y, double z) {
  public Spot {
    if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
      throw new IllegalArgumentException("(" + x + ", " + y + ", " + z + ") is no point");
    }
  }

  /** The point some way along a direction. */
  public Spot along(Spot direction, double way) {
    return new Spot(x + way * direction.x, y + way * direction.y, z + way * direction.z);
  }

  double dot(Spot other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** As {@code (12, -3.5, 0) mm}. */
  public String words() {
    return "(" + Words.number(x) + ", " + Words.number(y) + ", " + Words.number(z) + ") mm";
  }
}
