package outrigger.shapes.campaign;

import java.util.List;
import java.util.Random;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Draws operands of every kind, placed so that faces, edges and corners often fall together, or miss each other by one
 * grid step or by an angle of as little as a millionth of a radian.
 *
 * <p>Sizes are whole millimetres from 1 to 6, places whole millimetres within the reach, both at times a step off.
 */
final class RandomOperand {
  private final Random random;
  private final int reach;
  private final int flush;

  /**
   * @param reach whole millimetres that operands' origins lie within, either way
   * @param flush one in so many is placed so that it may meet others exactly; the rest anywhere
   */
  RandomOperand(Random random, int reach, int flush) {
    this.random = random;
    this.reach = reach;
    this.flush = flush;
  }

  /** An operand that has to do with none before it, or two that touch or nearly do. */
  List<Solid> draw() {
    int kind = random.nextInt(20);
    boolean close = kind == 19 && random.nextInt(flush * flush) == 0;
    return close ? tangent() : List.of(kind < 6 || kind == 19 ? box() : placed(kind < 9 ? cylinder() : formed(kind)));
  }

  /** An operand that shares something with another: all of it, a face, an edge, a corner, or nearly so. */
  Solid beside(Solid other) {
    return switch (random.nextInt(6)) {
      case 0 -> other;
      case 1 -> other.move(step(), step(), step());
      case 2 -> other.move(size(), 0, 0);
      case 3 -> other.move(size(), size(), 0);
      case 4 -> other.move(size(), size(), size());
      default -> other.turn(axis(), Math.toDegrees(tiny()));
    };
  }

  private Solid box() {
    Profile section = Profile.rectangle(2 * half(), 2 * half());
    Solid box = Prism.of(section, 0, size());
    return quarterly(box).move(spot(), spot(), spot());
  }

  private Solid cylinder() {
    double diameter = size();
    double chord = 0.3 / (1 << random.nextInt(4));
    Profile round = random.nextBoolean() ? Profile.post(diameter, chord) : Profile.hole(diameter, chord);
    if (diameter > 2 && random.nextInt(4) == 0) {
      round = round.cut(random.nextBoolean() ? Profile.hole(diameter - 1, 0.1) : Profile.hexagon(1));
    }
    return Prism.of(round, 0, size());
  }

  private Solid formed(int kind) {
    double size = 1 + size();
    return switch (kind) {
      case 9 -> Prism.of(Profile.rectangle(size, 2), 0, size()).withDraft(random.nextBoolean() ? 3 : -2);
      case 10 -> Prism.of(Profile.post(size, 0.1), 0, 2).withTopEdge(EdgeForm.fillet(0.5));
      case 11 -> Prism.of(Profile.roundedRectangle(size + 1, 3, 1), 0, 2).withTopEdge(EdgeForm.chamfer(0.5));
      case 12 -> Revolution.cone(size, random.nextBoolean() ? 0 : 1, 0, size(), sides());
      case 13 -> Revolution.coneCutter(1, size, 0, size(), sides());
      case 14 -> Revolution.sphere(size, sides());
      case 15 -> new Revolution(Profile.polygon(1, 0, 1 + size, 0, 1 + size, 2, 2, 1), sides(), random.nextBoolean());
      case 16 -> Prism.of(Profile.polygon(0, 0, 1 + size, 0, 1 + size, 1, 1, 1, 1, 3, 0, 3), 0, size());
      case 17 -> stack();
      default -> Stl.reread(quarterly(stack()).join(quarterly(box())), box());
    };
  }

  /** Prisms one on another, flush: some of unlike sections, some alike. */
  private Solid stack() {
    double first = 1 + random.nextInt(2);
    double size = 1 + size();
    Prism foot = Prism.of(Profile.rectangle(size, size), 0, first);
    Prism post = Prism.of(random.nextBoolean() ? Profile.post(size, 0.1) : Profile.rectangle(size, 1), first, 4);
    return Solid.union(List.of(foot, post, Prism.of(Profile.hexagon(1), 4, 5)));
  }

  /** Two round posts of unlike side counts that touch along a line, or one that fills the other's hole. */
  private List<Solid> tangent() {
    double r = 1 + random.nextInt(3);
    Solid first = Prism.of(random.nextBoolean() ? Profile.post(2 * r, 0.02) : Profile.hole(2 * r, 0.02), 0, 3);
    Solid second = Prism.of(random.nextBoolean() ? Profile.post(2, 0.1) : Profile.hole(2, 0.1), 0, size())
        .move(r + 1, 0, 0);
    if (random.nextBoolean()) {
      second = Prism.of(Profile.post(2 * r + 2, 0.1).cut(Profile.hole(2 * r, 0.05)), 0, size());
    }
    Placement placement = Placement.turn(axis(), 90 * random.nextInt(4)).then(Placement.move(spot(), spot(), spot()));
    return List.of(first.place(placement), second.place(placement));
  }

  private Solid placed(Solid solid) {
    Solid turned = switch (random.nextInt(12)) {
      case 0, 1 -> solid.turn(axis(), Math.toDegrees(tiny()));
      case 2 -> solid.turn(axis(), 360 * random.nextDouble()).turn(axis(), 360 * random.nextDouble());
      case 3 -> solid.turn(axis(), 15 * random.nextInt(24));
      default -> quarterly(solid);
    };
    return turned.move(spot(), spot(), spot());
  }

  private Solid quarterly(Solid solid) {
    Solid turned = solid.turn(axis(), 90 * random.nextInt(4));
    return random.nextInt(4) == 0 ? turned.mirror(axis()) : turned;
  }

  private Axis axis() {
    return Axis.values()[random.nextInt(3)];
  }

  private double half() {
    return (1 + random.nextInt(6)) / 2.0;
  }

  private int sides() {
    return 8 + 4 * random.nextInt(3);
  }

  /** An angle from a millionth to a tenth of a radian, either way. */
  private double tiny() {
    return (random.nextBoolean() ? 1 : -1) * Math.pow(10, -6 + 5 * random.nextDouble());
  }

  private double step() {
    return (random.nextInt(3) - 1) * Grid.STEP;
  }

  private double size() {
    return 1 + random.nextInt(6) + (random.nextInt(10) == 0 ? step() : 0);
  }

  private double spot() {
    int mm = random.nextInt(2 * reach + 1) - reach;
    if (random.nextInt(flush) != 0) {
      return mm + random.nextDouble();
    }
    return switch (random.nextInt(10)) {
      case 0 -> mm + step();
      case 1 -> mm + 0.5;
      case 2 -> mm + random.nextDouble();
      default -> mm;
    };
  }
}
