package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Families of parts with one wall of a stated thickness, all else thick, turned at random: the wall is found with its
 * thickness, and nothing else is. A second measurement, rays cast inward from points spread over the surface against every
 * facet, bears both out: no ray is shorter than what is told, and where something is told two facets lie that near.
 */
class WallFamiliesTest {
  private static final long SEED = 4711;
  private static final int EACH = Integer.getInteger("families", 4);
  private static final double CLOSE = 0.02;
  /** Sizes nearer to a limit are left out: which side they fall on is the grid's to say. */
  private static final double AT_LIMIT = 0.02;

  private static Solid box(double x, double y, double z, double sizeX, double sizeY, double sizeZ) {
    return Specimens.box(x, y, z, sizeX, sizeY, sizeZ);
  }

  private static Map<String, DoubleFunction<Solid>> walls(Random random) {
    double a = 20 + 10 * random.nextDouble();
    double b = 2 + 3 * random.nextDouble();
    double angle = 90 * random.nextDouble();
    Map<String, DoubleFunction<Solid>> all = new LinkedHashMap<>();
    all.put("rib", t -> box(-15, -15, 0, 30, 30, b).join(box(-t / 2, -7, 1, t, 14, 10).turn(Axis.Z, angle)));
    all.put("eccentric tube", t -> WallShapes.tube(a / 2, a / 2 - 4, 2 - t, 8));
    all.put("shell", t -> box(0, 0, 0, a, 18, 14).cut(box(b, b, b, a - b - t, 18 - 2 * b, 14 - 2 * b)));
    all.put("arch", t -> Prism.of(Profile.post(a, 0.002).cut(Profile.hole(a - 2 * t, 0.002),
        Profile.rectangle(2 * a, a).move(0, -a / 2 - 1)), 0, 6));
    all.put("wheel", t -> {
      Profile wheel = Profile.post(30, 0.01).cut(Profile.hole(24, 0.01)).join(Profile.post(8, 0.01));
      for (int i = 0; i < 5; i++) {
        wheel = wheel.join(Profile.rectangle(11, t).move(7.5, 0).turn(angle + 72 * i));
      }
      return Prism.of(wheel.cut(Profile.hole(3)), 0, 4);
    });
    all.put("hook", t -> Prism.of(Profile.polygon(0, 0, a, 0, a, 12, a - t, 12, a - t, b, b, b, b, 20, 0, 20), 0, 5));
    all.put("lattice", t -> {
      Profile bars = Profile.rectangle(28, t);
      for (int i = -1; i <= 1; i++) {
        bars = bars.join(Profile.rectangle(28, t).move(0, 6 * i), Profile.rectangle(2, 28).move(7 * i, 0));
      }
      return Prism.of(bars, 0, 3.5);
    });
    all.put("web", t -> Prism.of(Profile.rectangle(24, 14).cut(Profile.hole(4, 0.002).move(-2 - t / 2, 0),
        Profile.hole(4, 0.002).move(2 + t / 2, 0)), 0, b + 1));
    all.put("tray", t -> box(0, 0, 0, a, 16, 9).cut(box(b, b, t, a - 2 * b, 16 - 2 * b, 20)));
    all.put("table", t -> box(-12, -9, 10, 24, 18, b).join(box(-10, -7, 0, t, t, 11), box(8, 5, 0, 2, 2, 11),
        box(-10, 5, 0, 2, 2, 11), box(8, -7, 0, 2, 2, 11)));
    return all;
  }

  private static Solid turned(Solid solid, Random random) {
    return solid.turn(Axis.X, 360 * random.nextDouble()).turn(Axis.Y, 360 * random.nextDouble())
        .turn(Axis.Z, 360 * random.nextDouble()).move(9 * random.nextDouble(), 0, 5);
  }

  private static double size(Random random, double least, double most, double... limits) {
    while (true) {
      double size = least + (most - least) * random.nextDouble();
      boolean clear = true;
      for (double limit : limits) {
        clear &= Math.abs(size - limit) > AT_LIMIT;
      }
      if (clear) {
        return size;
      }
    }
  }

  @Test
  void read_wallOfAnyFamily_isFoundIfThinAndOnlyThen() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < EACH; i++) {
      Random random = new Random(SEED + i);
      for (Map.Entry<String, DoubleFunction<Solid>> family : walls(random).entrySet()) {
        double t = size(random, 0.25, 1.5, 0.45, 0.9);
        Mesh mesh = Mesher.mesh(turned(family.getValue().apply(t), random));
        String told = family.getKey() + " of " + t + ", seed " + (SEED + i) + ": ";
        check(mesh, t, told, wrong);
      }
    }
    assertEquals("", String.join("\n", wrong));
  }

  private static void check(Mesh mesh, double t, String told, List<String> wrong) {
    List<Concern> concerns = new WallGauge().read(WallShapes.specimen(mesh)).concerns();
    if (t > 0.9) {
      if (!concerns.isEmpty()) {
        wrong.add(told + "false alarm " + concerns);
      }
      return;
    }
    if (concerns.isEmpty()) {
      wrong.add(told + "missed");
      return;
    }
    RayWalls rays = new RayWalls(mesh);
    double shortest = rays.shortest(400, new Random(SEED));
    for (Concern c : concerns) {
      if (Math.abs(c.measured() - t) > CLOSE || c.severity() != (t < 0.45 ? Severity.ERROR : Severity.CAUTION)) {
        wrong.add(told + "told as " + c);
      }
      double across = rays.across(new Vec(c.x(), c.y(), c.z()));
      if (Math.abs(across - c.measured()) > 2 * CLOSE) {
        wrong.add(told + "there are " + across + " mm across " + c);
      }
    }
    if (shortest < concerns.get(0).measured() - CLOSE) {
      wrong.add(told + "a ray of " + shortest + " is shorter than " + concerns.get(0));
    }
  }

  @Test
  void read_slotsAndHoles_areFoundIfNarrowAndOnlyThen() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < EACH; i++) {
      Random random = new Random(SEED + i);
      double slot = size(random, 0.15, 1.2, 0.45);
      double hole = size(random, 0.8, 3.2, 2);
      Solid block = box(-15, -10, 0, 30, 20, 6);
      Solid slotted = block.cut(box(-slot / 2, -6, -1, slot, 12, 9).turn(Axis.Z, 90 * random.nextDouble()));
      Solid drilled = block.cut(Prism.of(Profile.hole(hole, 0.002), -1, 7).move(random.nextDouble(), 2, 0));
      gap(slotted, slot, 0.45, "narrow-gap", random, wrong);
      gap(drilled, hole, 2, "small-hole", random, wrong);
    }
    assertEquals("", String.join("\n", wrong));
  }

  private static void gap(Solid solid, double size, double limit, String rule, Random random, List<String> wrong) {
    List<Concern> concerns = new GapGauge().read(WallShapes.specimen(Mesher.mesh(turned(solid, random)))).concerns();
    boolean right = size > limit ? concerns.isEmpty() : concerns.size() == 1 && concerns.get(0).rule().equals(rule)
        && Math.abs(concerns.get(0).measured() - size) < CLOSE;
    if (!right) {
      wrong.add(rule + " of " + size + ": " + concerns);
    }
  }

  @Test
  void read_familiesAtTwoMillimetres_showNothing() {
    for (Map.Entry<String, DoubleFunction<Solid>> family : walls(new Random(SEED)).entrySet()) {
      Reading reading = new WallGauge().read(WallShapes.specimen(Mesher.mesh(family.getValue().apply(1.9))));
      assertTrue(reading.concerns().isEmpty(), family.getKey() + reading.concerns());
    }
  }
}
