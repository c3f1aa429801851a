package outrigger.shapes.print;

import java.util.Map;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Shapes of known answers for the gauges that look layer by layer; mm. */
public final class Specimens {
  private Specimens() {}

  public static CheckedMesh proven(Solid solid) {
    return Proof.judge(Mesher.mesh(solid)).proven().orElseThrow();
  }

  public static Specimen of(Solid solid) {
    return of(solid, PrintLimits.standard());
  }

  public static Specimen of(Solid solid, PrintLimits limits) {
    return new Specimen(proven(solid), limits, Map.of(), Workers.of(2));
  }

  /** A box on the bed, its corner at x, y, z. */
  public static Solid box(double x, double y, double z, double sizeX, double sizeY, double sizeZ) {
    return Prism.of(Profile.rectangle(sizeX, sizeY), 0, sizeZ).move(x + sizeX / 2, y + sizeY / 2, z);
  }

  /** A section drawn with x across and y up, from y = 0 to a length along Y. */
  public static Solid along(double length, double... section) {
    return Prism.of(Profile.polygon(section), -length, 0).turn(Axis.X, 90);
  }

  /** A block with a round hole along Y. */
  public static Solid holed(double diameter, double length) {
    double side = diameter + 10;
    Solid hole = Prism.of(Profile.hole(diameter), -length - 1, 1).turn(Axis.X, 90).move(side / 2, 0, side / 2);
    return box(0, 0, 0, side, length, side).cut(hole);
  }

  /** A flat plate of a length along X on two upright ones, across a gap. */
  public static Solid table(double gap, double depth) {
    return Solid.union(box(-gap / 2 - 4, 0, 0, 4, depth, 12), box(gap / 2, 0, 0, 4, depth, 12),
        box(-gap / 2 - 4, 0, 11.9, gap + 8, depth, 3.1));
  }
}
