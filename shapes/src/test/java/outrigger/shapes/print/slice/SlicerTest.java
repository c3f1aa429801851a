package outrigger.shapes.print.slice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

class SlicerTest {
  private static final Workers ONE = Workers.of(1);

  /** Areas at the middles of layers, times their thickness. */
  private static double stacked(CheckedMesh mesh, double layer) {
    double low = mesh.measures().minZ();
    int count = (int) Math.round((mesh.measures().maxZ() - low) / layer);
    List<Double> middles = IntStream.range(0, count).mapToObj(i -> low + (i + 0.5) * layer).toList();
    return layer * Slicer.of(mesh.mesh()).at(middles, ONE).stream().mapToDouble(Slice::area).sum();
  }

  private static double length(double... loop) {
    double sum = 0;
    for (int i = 0, j = loop.length - 2; i < loop.length; j = i, i += 2) {
      sum += Math.hypot(loop[i] - loop[j], loop[i + 1] - loop[j + 1]);
    }
    return sum;
  }

  @Test
  void at_frustum_cutsSimilarPolygon() {
    CheckedMesh cone = Specimens.proven(Revolution.cone(20, 10, 0, 10, 16));
    for (double z : new double[] {0, 2.5, 5, 9.99}) {
      double r = 10 - z / 2;
      Slice slice = Slicer.of(cone.mesh()).at(z);
      assertEquals(16 * r * r / 2 * StrictMath.sin(2 * Math.PI / 16), slice.area(), 0.01);
      assertEquals(16 * 2 * r * StrictMath.sin(Math.PI / 16), length(slice.loops().get(0)), 0.01);
      assertEquals(slice.area(), slice.section().area(), 1e-9);
    }
  }

  @Test
  void at_aboveAndBelow_isEmpty() {
    Slicer slicer = Slicer.of(Specimens.proven(Specimens.box(0, 0, 0, 3, 4, 5)).mesh());
    assertTrue(slicer.at(-0.1).loops().isEmpty());
    assertTrue(slicer.at(5.1).section().isEmpty());
    assertEquals(12, slicer.at(0).area(), 1e-12);
  }

  @Test
  void section_tubeInTube_keepsHolesWithTheirShells() {
    Solid tubes = Solid.union(
        Prism.of(Profile.rectangle(20, 20).cut(Profile.rectangle(16, 16)), 0, 5),
        Prism.of(Profile.rectangle(10, 10).cut(Profile.rectangle(6, 6)), 0, 5));
    Slice slice = Slicer.of(Specimens.proven(tubes).mesh()).at(2);
    assertEquals(4, slice.loops().size());
    assertEquals(2, slice.section().pieces(0).size());
    assertEquals(400 - 256 + 100 - 36, slice.section().area(), 1e-9);
    assertTrue(slice.section().holds(0, 4) && !slice.section().holds(0, 0) && !slice.section().holds(0, 6));
  }

  /** Straight walls: the sum is the volume. Leaning flat walls: the middle rule errs by the square of the layer. */
  @Test
  void at_layers_sumUpToTheVolume() {
    CheckedMesh prism = Specimens.proven(Specimens.holed(8, 12).turn(Axis.X, 90));
    assertEquals(prism.measures().volume(), stacked(prism, 0.2), 2e-4 * prism.measures().volume());
    CheckedMesh cone = Specimens.proven(Revolution.cone(20, 4, 0, 12));
    double volume = cone.measures().volume();
    double coarse = Math.abs(stacked(cone, 0.8) - volume);
    double fine = Math.abs(stacked(cone, 0.4) - volume);
    // A wall of slope s leaves out pi s^2 h^2 / 12 a unit of height: here s = 2/3, 12 high.
    assertEquals(Math.PI * 4 / 9 * 0.64 / 12 * 12, coarse, 0.02);
    assertEquals(4, coarse / fine, 0.1);
  }

  @Test
  void at_sphere_errsByTheSquareOfTheLayer() {
    CheckedMesh ball = Specimens.proven(Revolution.sphere(20).move(0, 0, 10));
    double volume = ball.measures().volume();
    assertEquals(volume, stacked(ball, 0.2), 1e-4 * volume);
  }

  @Test
  void at_anyNumberOfWorkers_sameSlices() {
    CheckedMesh mesh = Specimens.proven(Specimens.holed(8, 12));
    List<Double> heights = IntStream.range(0, 80).mapToObj(i -> 0.1 + 0.2 * i).toList();
    List<Slice> one = Slicer.of(mesh.mesh()).at(heights, Workers.of(1));
    List<Slice> three = Slicer.of(mesh.mesh()).at(heights, Workers.of(3));
    for (int i = 0; i < one.size(); i++) {
      assertEquals(one.get(i).area(), three.get(i).area());
      assertEquals(one.get(i).loops().size(), three.get(i).loops().size());
    }
  }
}
