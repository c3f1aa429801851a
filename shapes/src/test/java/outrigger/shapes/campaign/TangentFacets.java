package outrigger.shapes.campaign;

import java.util.Random;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Draws round bodies about one tilted axis, or balls about one point, with sides that differ in number or by a turn, a grid
 * step or two apart, as files tell them: facets alone. Their surfaces all but coincide and cross all over, and nothing tells
 * that they are turned.
 */
final class TangentFacets {
  private enum Family { POSTS, CONES, BALLS }

  private final Random random;
  private final Family family;
  private final int[] tilt = new int[3];
  private final double size;

  TangentFacets(Random random) {
    this.random = random;
    family = Family.values()[random.nextInt(Family.values().length)];
    for (int k = 0; k < 3; k++) {
      tilt[k] = 1 + random.nextInt(88);
    }
    size = 3 + random.nextInt(4);
  }

  Solid draw() {
    Solid turned = upright().turn(Axis.X, tilt[0]).turn(Axis.Y, tilt[1]).turn(Axis.Z, tilt[2]);
    Mesh mesh = Mesher.mesh(turned.move(step(), step(), step()));
    return Faceted.of(mesh.xyz(), mesh.corners());
  }

  private Solid upright() {
    return switch (family) {
      case POSTS -> Prism.of(Profile.post(size, 0.02 + 0.02 * random.nextInt(3)), random.nextInt(3), 5 + random.nextInt(3))
          .turn(Axis.Z, random.nextInt(90));
      case CONES -> Revolution.cone(size, 1, 0, 5, 12 + 4 * random.nextInt(4)).turn(Axis.Z, random.nextInt(30));
      case BALLS -> Revolution.sphere(size, 12 + 4 * random.nextInt(3)).turn(Axis.Z, random.nextInt(30));
    };
  }

  private double step() {
    return Grid.toMm(random.nextInt(5) - 2);
  }
}
