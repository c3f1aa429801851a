package outrigger.shapes.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Closed forms by hand: tilt of a box is the angle of half its depth over half its height. */
class PoseGaugeTest {
  private static final Solid MUSHROOM = Prism.of(Profile.rectangle(8, 8), 0, 12)
      .join(Prism.of(Profile.rectangle(30, 30), 12, 16));

  private static Fact fact(Specimen s, String name) {
    return new PoseGauge().read(s).facts().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void trial_box_givesContactHeightAndTilt() {
    Pose pose = PoseTrial.of(Specimens.of(Specimens.box(3, 4, 5, 20, 10, 30)), 0, 0, -1);
    assertEquals(200, pose.contact(), 1e-3);
    assertEquals(30, pose.height(), 1e-9);
    assertEquals(StrictMath.toDegrees(StrictMath.atan2(5, 15)), pose.tilt(), 1e-6);
    assertEquals(0, pose.support());
    assertFalse(pose.layersAcross());
  }

  @Test
  void trial_mushroom_supportIsTheRimTimesItsHeight() {
    Pose pose = PoseTrial.of(Specimens.of(MUSHROOM), 0, 0, -1);
    assertEquals((900 - 64) * 12, pose.support(), 1e-2);
    assertEquals(0, PoseTrial.of(Specimens.of(MUSHROOM), 0, 0, 1).support(), 1e-9);
  }

  @Test
  void read_cubeLoadedUpright_isBetterOnItsSide() {
    Specimen cube = Specimens.of(Specimens.box(0, 0, 0, 20, 20, 20));
    assertEquals(0, fact(cube, "better-poses").value());
    assertEquals(0, fact(cube.loaded(Axis.X), "better-poses").value());
    Fact upright = fact(cube.loaded(Axis.Z), "better-poses");
    assertEquals(4, upright.value(), "its four sides: " + upright.words());
    assertTrue(upright.words().endsWith("layers that a load along Z pulls apart"), upright.words());
  }

  @Test
  void read_mushroom_isBetterOnItsCap() {
    Fact better = fact(Specimens.of(MUSHROOM), "better-poses");
    assertTrue(better.value() >= 1, better.words());
    assertTrue(better.words().contains("its top (+Z) on the bed: no support, stands on 900 mm2"), better.words());
    assertEquals(0, fact(Specimens.of(MUSHROOM.turn(Axis.X, 180)), "better-poses").value());
  }

  @Test
  void read_turnedAndMoved_findsTheSameNumbers() {
    for (int quarter = 0; quarter < 4; quarter++) {
      Fact better = fact(Specimens.of(MUSHROOM.turn(Axis.Z, 90 * quarter).move(50, -30, 7)), "better-poses");
      assertTrue(better.words().contains("no support, stands on 900 mm2, 16.0 mm high"), better.words());
    }
  }

  /** What holds by itself, a bridge of 8 mm here, asks for no support, and no other pose is better for having none. */
  @Test
  void read_shortBridge_needsNoSupportAsItStands() {
    Fact better = fact(Specimens.of(Specimens.table(8, 30)), "better-poses");
    assertEquals(0, better.value(), better.words());
    assertTrue(better.words().contains("no support, stands on 240 mm2"), better.words());
    Fact longer = fact(Specimens.of(Specimens.table(12, 30)), "better-poses");
    assertTrue(longer.value() >= 1 && longer.words().contains("as it stands: support of up to 4284 mm3"), longer.words());
  }

  @Test
  void read_workers_changeNothing() {
    Specimen one = new Specimen(Specimens.proven(MUSHROOM), PrintLimits.standard(), java.util.Map.of(), Workers.of(1));
    assertEquals(new PoseGauge().read(one).facts(), new PoseGauge().read(Specimens.of(MUSHROOM)).facts());
  }

  /** Against the definition, with exact signs: no point outside any face, and every edge there both ways. */
  @Test
  void hull_randomPoints_holdsAllOfThem() {
    for (long seed = 1; seed <= 20; seed++) {
      Mesh mesh = cloud(seed);
      List<int[]> hull = Hull.of(mesh, IntStream.range(0, mesh.vertexCount()).toArray());
      for (int[] t : hull) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
          assertTrue(side(mesh, t, v) <= 0, "seed " + seed);
        }
        assertTrue(hull.stream().anyMatch(o -> isEdge(o, t[1], t[0])), "seed " + seed);
      }
      long corners = hull.stream().flatMapToInt(java.util.Arrays::stream).distinct().count();
      assertEquals(2 * corners - 4, hull.size(), "Euler, seed " + seed);
    }
  }

  /** Small whole coordinates, so that many points share a plane. */
  private static Mesh cloud(long seed) {
    Random random = new Random(seed);
    int[] xyz = new int[3 * 60];
    int[] corners = new int[3 * 60];
    for (int i = 0; i < xyz.length; i++) {
      xyz[i] = random.nextInt(6);
      corners[i] = i / 3;
    }
    return Mesh.of(xyz, corners);
  }

  private static boolean isEdge(int[] t, int from, int to) {
    return t[0] == from && t[1] == to || t[1] == from && t[2] == to || t[2] == from && t[0] == to;
  }

  private static int side(Mesh m, int[] t, int v) {
    return Sign.side(m.x(t[0]), m.y(t[0]), m.z(t[0]), m.x(t[1]), m.y(t[1]), m.z(t[1]), m.x(t[2]), m.y(t[2]), m.z(t[2]),
        m.x(v), m.y(v), m.z(v));
  }
}
