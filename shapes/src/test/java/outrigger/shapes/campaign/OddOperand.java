package outrigger.shapes.campaign;

import java.util.Random;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Draws operands of one family each, other shapes in other company than {@link RandomOperand}: stars, lettering, hulls of
 * points, balls about one centre, rings, bars of a lattice, specks of few grid steps, bodies at the grid's rim, stairs,
 * slivers, cones on one axis.
 */
final class OddOperand {
  /** Families there are. */
  static final int FAMILIES = 11;

  private final Random random;
  private final int family;
  private final double size;
  private int drawn;

  /**
   * @param family 0 to {@link #FAMILIES} - 1
   */
  OddOperand(Random random, int family) {
    this.random = random;
    this.family = family;
    size = 3 + random.nextInt(4);
  }

  Solid draw() {
    drawn++;
    return switch (family) {
      case 0 -> near(anyhow(star()));
      case 1 -> drawn == 1 ? base() : letters();
      case 2 -> near(anyhow(Hull.of(random, 5 + random.nextInt(14), 1 + random.nextInt(4))));
      case 3 -> anyhow(Revolution.sphere(random.nextBoolean() ? size : size + power(-4, -1), sides()));
      case 4 -> near(anyhow(ring()));
      case 5 -> bar();
      case 6 -> speck();
      case 7 -> near(anyhow(star())).move(Grid.LIMIT_MM - 16, 16 - Grid.LIMIT_MM, Grid.LIMIT_MM - 16);
      case 8 -> step();
      case 9 -> near(anyhow(sliver()));
      default -> onAxis();
    };
  }

  private Solid star() {
    int points = 3 + random.nextInt(8);
    double inner = 0.3 + random.nextDouble();
    double outer = 2 + 2 * random.nextDouble();
    double[] xy = new double[4 * points];
    for (int i = 0; i < 2 * points; i++) {
      double r = i % 2 == 0 ? outer : inner;
      xy[2 * i] = r * StrictMath.cos(Math.PI * i / points);
      xy[2 * i + 1] = r * StrictMath.sin(Math.PI * i / points);
    }
    return Prism.of(Profile.polygon(xy), 0, 1 + random.nextInt(4));
  }

  private Solid base() {
    return switch (random.nextInt(3)) {
      case 0 -> Prism.of(Profile.rectangle(20, 11), 0, 4);
      case 1 -> Revolution.sphere(12, sides());
      default -> Prism.of(Profile.post(12, 0.05), 0, 8).turn(Axis.X, 90);
    };
  }

  private Solid letters() {
    String text = "" + (char) ('A' + random.nextInt(26)) + random.nextInt(10);
    Solid letters = Prism.of(Profile.text(text, 3 + random.nextInt(2), 0.6), random.nextInt(3), 8);
    return near(random.nextBoolean() ? letters : letters.turn(axis(), angle()));
  }

  private Solid ring() {
    double radius = 2 + random.nextInt(3);
    double thick = 0.4 + random.nextDouble();
    int corners = 3 + random.nextInt(6);
    double[] xz = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      xz[2 * i] = radius + thick * StrictMath.cos(2 * Math.PI * i / corners);
      xz[2 * i + 1] = thick * StrictMath.sin(2 * Math.PI * i / corners);
    }
    return new Revolution(Profile.polygon(xz), sides(), random.nextBoolean());
  }

  /** Along one of the axes, at whole places, so that bars run through, along and beside each other. */
  private Solid bar() {
    double wide = 1 + random.nextInt(2);
    Profile section = random.nextInt(3) == 0 ? Profile.post(wide, 0.05) : Profile.rectangle(wide, wide);
    Solid bar = Prism.of(section, -1, 4 + random.nextInt(3));
    int along = random.nextInt(3);
    double u = wide / 2 * random.nextInt(7);
    double v = wide / 2 * random.nextInt(7);
    return along == 0 ? bar.move(u, v, 0) : along == 1 ? bar.turn(Axis.X, -90).move(u, 0, v)
        : bar.turn(Axis.Y, 90).move(0, u, v);
  }

  private Solid speck() {
    double grid = Grid.STEP * (2 + random.nextInt(20));
    return Prism.of(Profile.rectangle(grid * (1 + random.nextInt(3)), grid * 2), 0, grid)
        .turn(axis(), 90 * random.nextInt(4)).move(steps(), steps(), steps());
  }

  private double steps() {
    return Grid.STEP * (random.nextInt(41) - 20);
  }

  /** Steps wind up round the axis, flush on each other or a little short of it. */
  private Solid step() {
    double low = drawn * (random.nextBoolean() ? 1 : 0.999);
    return Prism.of(Profile.rectangle(8, 2), low, drawn + 1 + (random.nextInt(3) == 0 ? 0.2 : 0)).move(3, 0, 0)
        .turn(Axis.Z, drawn * (size < 5 ? 30 : 7 * size / 3));
  }

  private Solid sliver() {
    double thin = power(-3, -0.5);
    return Prism.of(Profile.rectangle(6, random.nextBoolean() ? thin : 4), 0, thin);
  }

  private Solid onAxis() {
    double height = 1 + random.nextInt(4);
    Solid solid = switch (random.nextInt(3)) {
      case 0 -> Revolution.cone(1 + random.nextInt(6), random.nextInt(3), 0, height, sides());
      case 1 -> Prism.of(Profile.post(1 + random.nextInt(5), 0.05), 0, height);
      default -> Prism.of(Profile.roundedRectangle(4, 3, 1), 0, 1 + height).withTopEdge(EdgeForm.chamfer(0.5));
    };
    return solid.turn(Axis.X, 180 * random.nextInt(2)).move(0, 0, random.nextInt(3));
  }

  private int sides() {
    return 8 + 4 * random.nextInt(4);
  }

  private Solid anyhow(Solid solid) {
    return solid.turn(axis(), angle()).turn(axis(), angle());
  }

  private double angle() {
    return switch (random.nextInt(5)) {
      case 0 -> 90 * random.nextInt(4);
      case 1 -> 15 * random.nextInt(24);
      case 2 -> power(-5, -1);
      default -> 360 * random.nextDouble();
    };
  }

  private double power(double from, double to) {
    return StrictMath.pow(10, from + (to - from) * random.nextDouble());
  }

  private Solid near(Solid solid) {
    return solid.move(place(), place(), place());
  }

  private double place() {
    return random.nextInt(3) == 0 ? random.nextInt(5) - 2 : 4 * random.nextDouble() - 2;
  }

  private Axis axis() {
    return Axis.values()[random.nextInt(3)];
  }
}
