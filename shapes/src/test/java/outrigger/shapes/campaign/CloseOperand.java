package outrigger.shapes.campaign;

import java.util.Random;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Draws operands that lie as close as can be and are turned alike by any angle, so that the grid bends their flat faces: one
 * body a grid step or few on, or turned by a millionth to a thousandth of a radian; posts that stand on a plate or end in it
 * but for a step; blocks in a row a step apart.
 */
final class CloseOperand {
  private enum Family { STEPS, TINY_TURNS, STANDING, ENDING, ROW }

  private final Random random;
  private final Family family;
  private final Solid body;
  private final Axis axis;
  private final double tiny;
  private final Axis tilt;
  private final double degrees;
  private int drawn;

  CloseOperand(Random random) {
    this.random = random;
    family = Family.values()[random.nextInt(Family.values().length)];
    body = body();
    axis = axis();
    tiny = Math.toDegrees(Math.pow(10, -6 + random.nextInt(4)));
    tilt = axis();
    degrees = 1 + random.nextInt(88);
  }

  Solid draw() {
    return upright(drawn++).turn(tilt, degrees).turn(Axis.Z, 20);
  }

  private Solid upright(int i) {
    return switch (family) {
      case STEPS -> body.move(step(), step(), step());
      case TINY_TURNS -> body.turn(axis, i * tiny);
      case STANDING -> i == 0 ? plate() : Prism.of(outline(), 4 + step(), 8).move(place(10), place(6), 0);
      case ENDING -> i == 0 ? plate() : Prism.of(outline(), -1, 4 + step()).move(place(10), place(6), 0);
      case ROW -> Prism.of(Profile.rectangle(5, 4 + random.nextInt(4)), 0, 3 + random.nextInt(3)).move(5 * i + step(), 0, 0);
    };
  }

  private static Solid plate() {
    return Prism.of(Profile.rectangle(30, 20), 0, 4);
  }

  private Solid body() {
    double size = 3 + random.nextInt(6);
    return random.nextInt(5) == 0 ? Revolution.cone(size, 1, 0, size, 12) : Prism.of(outline(), 0, size);
  }

  private Profile outline() {
    double size = 3 + random.nextInt(6);
    return switch (random.nextInt(4)) {
      case 0 -> Profile.rectangle(size, 3 + random.nextInt(6));
      case 1 -> Profile.post(size, 0.02);
      case 2 -> Profile.hexagon(size);
      default -> Profile.rectangle(9, 6).cut(Profile.hole(4));
    };
  }

  private double step() {
    return Grid.toMm(random.nextInt(5) - 2);
  }

  private double place(int reach) {
    return random.nextInt(2 * reach + 1) - reach;
  }

  private Axis axis() {
    return Axis.values()[random.nextInt(3)];
  }
}
