package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Solids whose thickness is known in closed form, and specimens of them. */
public final class WallShapes {
  private WallShapes() {}

  public static Specimen specimen(Solid solid) {
    return specimen(Mesher.mesh(solid));
  }

  public static Specimen specimen(Mesh mesh) {
    return specimen(mesh, PrintLimits.standard(), 1);
  }

  public static Specimen specimen(Mesh mesh, PrintLimits limits, int threads) {
    CheckedMesh checked = Proof.judge(mesh).proven()
        .orElseThrow(() -> new AssertionError(Proof.judge(mesh).findings().toString()));
    return new Specimen(checked, limits, Map.of(), Workers.of(threads));
  }

  public static Solid block(double x, double y, double z) {
    return Prism.of(Profile.rectangle(x, y), 0, z);
  }

  /** A wedge along Y, its edge on the Y axis, rising to x. */
  public static Solid wedge(double length, double from, double to, double width) {
    return Prism.of(Profile.polygon(0, 0, length, 0, length, to, 0, from), 0, width);
  }

  /** A tube with its bore off the middle along X: thinnest at (+outer, 0), by (outer - bore) / 2 - off. */
  public static Solid tube(double outer, double bore, double off, double height) {
    return Prism.of(Profile.post(outer, 0.002).cut(Profile.hole(bore, 0.002).move(off, 0)), 0, height);
  }

  /** A ball about the origin, moved up. */
  public static Solid ball(double diameter, double z, double x) {
    int n = 48;
    List<Double> xy = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double a = StrictMath.PI * (i / (double) n - 0.5);
      xy.add(i == 0 || i == n ? 0 : diameter / 2 * StrictMath.cos(a));
      xy.add(diameter / 2 * StrictMath.sin(a));
    }
    return new Revolution(Profile.polygon(xy.stream().mapToDouble(d -> d).toArray()), 96, false).move(x, 0, z);
  }

  /** Two balls and a neck along Z. */
  public static Solid dumbbell(double ends, double neck) {
    return ball(ends, 0, 0).join(ball(ends, 2 * ends, 0), Prism.of(Profile.post(neck, 0.002), 0, 2 * ends));
  }

  /** Turned all ways and moved. */
  public static Solid turned(Solid solid) {
    return solid.turn(Axis.X, 23).turn(Axis.Y, -41).turn(Axis.Z, 67).move(3, -5, 7);
  }
}
