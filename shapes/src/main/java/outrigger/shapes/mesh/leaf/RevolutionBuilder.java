package outrigger.shapes.mesh.leaf;

import outrigger.shapes.profile.Circles;
import outrigger.shapes.profile.Region;
import outrigger.shapes.profile.Ring;
import outrigger.shapes.solid.Revolution;

/** Builds a revolution: each corner of the half section becomes a circle, or a point where it lies on the axis. */
final class RevolutionBuilder {
  private final Revolution revolution;
  private final PolyhedronBuilder out = new PolyhedronBuilder();

  RevolutionBuilder(Revolution revolution) {
    this.revolution = revolution;
  }

  Polyhedron build() {
    for (Region region : revolution.halfSection().regions()) {
      add(region.shell());
      region.holes().forEach(this::add);
    }
    return out.build();
  }

  private void add(Ring ring) {
    out.startRing();
    int n = ring.size();
    int[][] circles = new int[n][];
    for (int i = 0; i < n; i++) {
      circles[i] = circle(ring.x(i), ring.y(i));
    }
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      if (ring.x(i) != 0 || ring.x(j) != 0) {
        addStrip(circles[i], circles[j]);
      }
    }
  }

  /** The strip between the circles of an edge's start and end, matter to the edge's left. */
  private void addStrip(int[] start, int[] end) {
    int sides = revolution.sides();
    for (int k = 0; k < sides; k++) {
      int next = (k + 1) % sides;
      out.wall(start[k], start[next], end[next], end[k]);
    }
  }

  private int[] circle(int radius, int z) {
    int[] numbers = new int[revolution.sides()];
    int[] xy = radius == 0 ? new int[2 * numbers.length]
        : Circles.corners(radius, numbers.length, revolution.circumscribed());
    for (int k = 0; k < numbers.length; k++) {
      numbers[k] = out.vertex(xy[2 * k], xy[2 * k + 1], z);
    }
    return numbers;
  }
}
