package outrigger.shapes.mesh.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;

class FrameTest {
  /**
   * A tetrahedron that looks different from every side; its bounds have odd sums, so that no grid point is in the middle.
   */
  private static final Polyhedron ODD = new Polyhedron(new int[] {0, 0, 0, 1001, 0, 0, 100, 2003, 0, 300, 500, 3007},
      List.of(new int[][] {{0, 2, 1}}, new int[][] {{0, 1, 3}}, new int[][] {{1, 2, 3}}, new int[][] {{2, 0, 3}}));

  private static Polyhedron moved(int x, int y, int z) {
    return LeafBuilder.place(ODD, Placement.move(Grid.toMm(x), Grid.toMm(y), Grid.toMm(z)));
  }

  private static Frame frame(Polyhedron p) {
    return Frame.of(List.of(p), List.of(false));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, -1, 12_345, -70_000})
  void in_operandMovedByGridSteps_isTheSame(int steps) {
    Polyhedron p = moved(steps, -2 * steps, 1 - steps);
    assertArrayEquals(frame(ODD).in(ODD).xyz(), frame(p).in(p).xyz());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void in_operandTurnedAndMirrored_isTheSame(int way) {
    Placement turn = Placement.turn(Axis.values()[way % 3], 90).then(Placement.move(Grid.toMm(way), Grid.toMm(5), 0));
    Polyhedron p = LeafBuilder.place(ODD, way < 3 ? turn : turn.then(Placement.mirror(Axis.values()[way % 3])));
    assertArrayEquals(frame(ODD).in(ODD).xyz(), frame(p).in(p).xyz());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, -70_000})
  void out_meshInItsFrame_comesBack(int steps) {
    int[] xyz = moved(steps, 3 * steps, 7).xyz();
    int[] corners = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};
    Mesh given = Mesh.of(xyz, corners);
    Frame frame = frame(moved(steps, 3 * steps, 7));
    Rounded in = frame.in(new Rounded(given.xyz(), given.corners(), new boolean[4], (v, axis) -> BigInteger.ZERO));
    Mesh back = frame.out(Mesh.of(in.xyz(), in.corners()));
    assertArrayEquals(given.xyz(), back.xyz());
    assertArrayEquals(given.corners(), back.corners());
  }
}
