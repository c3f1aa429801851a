package outrigger.shapes.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * A random expression of prisms along one axis: boxes and posts on whole millimetres, so that edges, corners and end faces
 * coincide, rings with holes, several heights, quarter turns and mirrors, and the same operand twice.
 */
final class RandomPlanar {
  private final Random random;
  /** Whether outlines may have corners off whole millimetres and cross there. */
  private final boolean slanted;
  /** Width of the square that outlines are put into, mm. */
  private final int room;

  private RandomPlanar(Random random, boolean slanted, int room) {
    this.random = random;
    this.slanted = slanted;
    this.room = room;
  }

  /** An expression of two to twelve operands. */
  static Solid of(long seed, boolean slanted, int room) {
    Random random = new Random(seed);
    return new RandomPlanar(random, slanted, room).expression(2 + random.nextInt(11));
  }

  private Solid expression(int operands) {
    List<Solid> parts = new ArrayList<>();
    for (int i = 0; i < operands; i++) {
      parts.add(i > 0 && random.nextInt(12) == 0 ? parts.get(random.nextInt(i)) : operand());
    }
    while (parts.size() > 1) {
      int k = Math.min(parts.size(), 2 + random.nextInt(4));
      List<Solid> taken = new ArrayList<>(parts.subList(0, k));
      parts.subList(0, k).clear();
      int draw = random.nextInt(8);
      parts.add(random.nextBoolean() ? 0 : parts.size(), draw < 4 ? Solid.union(taken)
          : draw < 7 ? taken.get(0).cut(taken.subList(1, k)) : Solid.common(taken.toArray(new Solid[0])));
    }
    return placed(parts.get(0));
  }

  /** The whole turned by right angles, mirrored and moved off the middle. */
  private Solid placed(Solid solid) {
    Solid all = solid;
    for (int i = random.nextInt(3); i > 0; i--) {
      Axis axis = Axis.values()[random.nextInt(3)];
      all = random.nextBoolean() ? all.turn(axis, 90 * random.nextInt(4)) : all.mirror(axis);
    }
    return all.move(random.nextInt(3), random.nextInt(3), random.nextInt(3));
  }

  private Solid operand() {
    Profile profile = outline();
    if (random.nextInt(4) == 0) {
      Profile pierced = profile.cut(outline());
      profile = pierced.isEmpty() ? profile : pierced;
    }
    int bottom = random.nextInt(4);
    Solid prism = Prism.of(profile, bottom, bottom + 1 + random.nextInt(4));
    return random.nextInt(5) == 0 ? prism.mirror(Axis.Z).move(0, 0, 6) : prism;
  }

  private Profile outline() {
    double x = random.nextInt(room);
    double y = random.nextInt(room);
    Profile profile = switch (random.nextInt(slanted ? 4 : 2)) {
      case 0 -> Profile.rectangle(2 * (1 + random.nextInt(3)), 2 * (1 + random.nextInt(3)));
      case 1 -> Profile.chamferedRectangle(4 + 2 * random.nextInt(2), 4, 1);
      case 2 -> Profile.post(1 + random.nextInt(5), 0.05);
      default -> Profile.hexagon(1 + random.nextInt(4)).turn(random.nextInt(360));
    };
    return profile.move(x, y);
  }
}
