package outrigger.shapes.mesh;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import outrigger.shapes.mesh.frame.Frame;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.settle.Settler;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.Workers;

/** Places a mesh turned by any angle: its turned corners and its move are rounded once each, and facets brought to rest. */
final class Turning {
  private Turning() {}

  /** A placed mesh; empty where nothing of it is thicker than the grid. */
  static Optional<Mesh> of(Mesh mesh, Placement placement, Workers workers, Predicate<Mesh> isSound) {
    Placement p = placement.onGrid();
    double[][] rows = {{p.xx(), p.xy(), p.xz()}, {p.yx(), p.yy(), p.yz()}, {p.zx(), p.zy(), p.zz()}};
    long[] by = {Grid.fromMm(p.tx()), Grid.fromMm(p.ty()), Grid.fromMm(p.tz())};
    int[] xyz = new int[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      LeafBuilder.set(xyz, 3 * v, rounded(rows[0], mesh, v) + by[0], rounded(rows[1], mesh, v) + by[1],
          rounded(rows[2], mesh, v) + by[2]);
    }
    int[] corners = p.mirrors() ? Frame.reversed(mesh.corners()) : mesh.corners();
    Frame frame = Frame.of(List.of(polyhedron(xyz, corners)), List.of(false));
    boolean[] moved = new boolean[mesh.vertexCount()];
    Arrays.fill(moved, true);
    Rounded facets = new Rounded(xyz, corners, moved, (v, k) -> exactly(rows[k], mesh, v).add(Rounded.fixed(by[k])));
    Workers some = workers.from(Mesher.MANY, mesh.vertexCount());
    return new Settler(frame.in(facets), frame, some, isSound).mesh();
  }

  /** A row of a turn times a corner, rounded; the row turned round gives the same turned round, halves included. */
  private static long rounded(double[] row, Mesh mesh, int v) {
    boolean back = row[0] != 0 ? row[0] < 0 : row[1] != 0 ? row[1] < 0 : row[2] < 0;
    double at = along(row, mesh, v);
    return back ? -(long) Math.floor(0.5 - at) : (long) Math.floor(at + 0.5);
  }

  private static double along(double[] row, Mesh mesh, int v) {
    return row[0] * mesh.x(v) + row[1] * mesh.y(v) + row[2] * mesh.z(v);
  }

  /** The same before it is rounded, as {@link Rounded} tells it. */
  private static BigInteger exactly(double[] row, Mesh mesh, int v) {
    BigDecimal sum = new BigDecimal(row[0]).multiply(BigDecimal.valueOf(mesh.x(v)))
        .add(new BigDecimal(row[1]).multiply(BigDecimal.valueOf(mesh.y(v))))
        .add(new BigDecimal(row[2]).multiply(BigDecimal.valueOf(mesh.z(v))));
    return sum.multiply(new BigDecimal(Rounded.fixed(1))).toBigInteger();
  }

  /** Facets as an operand. */
  static Polyhedron polyhedron(int[] xyz, int[] corners) {
    List<int[][]> facets = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 3) {
      facets.add(new int[][] {{corners[i], corners[i + 1], corners[i + 2]}});
    }
    return new Polyhedron(xyz, facets);
  }
}
