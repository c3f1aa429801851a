package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.stl.StlWriter;

/** Holds meshes, proofs and bytes to the same whatever the number of threads. */
class ThreadsTest {
  private static final long SEED = 20;

  /** Of more corners than the least for which threads are used; where the balls cross, corners are rounded. */
  private static Solid bitten() {
    return Revolution.sphere(40, 160).cut(Revolution.sphere(30, 160).turn(Axis.X, 20).move(13.1, 9.7, 3.3));
  }

  /** Posts of many sides through a plate, some flush with it, some standing on it, some in each other. */
  private static Solid crowded() {
    Random random = new Random(SEED);
    List<Solid> posts = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      double bottom = random.nextInt(4);
      posts.add(Prism.of(Profile.post(1 + 3 * random.nextDouble(), 0.0002), bottom, bottom + 1 + random.nextInt(3))
          .move(60 * random.nextDouble(), 60 * random.nextDouble(), 0));
    }
    Solid bar = Prism.of(Profile.rectangle(3, 3), -40, 40).turn(Axis.X, 90).move(30, 30, 2);
    return Prism.of(Profile.rectangle(60, 60), 0, 3).move(30, 30, 0).join(posts.toArray(new Solid[0])).cut(bar);
  }

  @ParameterizedTest
  @ValueSource(strings = {"spacer", "tower", "tray", "random-prisms"})
  void mesh_referencePart_sameWithAnyNumberOfThreads(String name) throws IOException {
    ReferencePart part = ReferencePart.named(name);
    Mesh one = part.mesh();
    for (int threads = 2; threads <= 3; threads++) {
      assertSame(one, part.mesh(mesh -> false, Workers.of(threads)), name + " on " + threads + " threads");
    }
  }

  @Test
  void proofOf_largePart_sameBytesWithAnyNumberOfThreads() {
    for (Solid solid : List.of(bitten(), crowded())) {
      Proof.Verdict one = Proof.of(solid);
      byte[] bytes = StlWriter.bytes(one.proven().orElseThrow(), "part");
      for (int threads = 2; threads <= 3; threads++) {
        Workers workers = Workers.of(threads);
        Proof.Verdict some = Proof.of(solid, workers);
        assertArrayEquals(bytes, StlWriter.bytes(some.proven().orElseThrow(), "part", workers), threads + " threads");
        assertEquals(one.measures(), some.measures());
      }
    }
  }

  @Test
  void judge_largeSpoiledMesh_sameFindingsWithAnyNumberOfThreads() {
    Mesh sound = Mesher.mesh(bitten());
    Random random = new Random(SEED);
    for (int round = 0; round < 8; round++) {
      int[] xyz = sound.xyz();
      xyz[random.nextInt(xyz.length)] += round < 4 ? 40_000 : 2;
      Mesh spoiled = Mesh.of(xyz, sound.corners());
      Proof.Verdict one = Proof.judge(spoiled);
      Proof.Verdict two = Proof.judge(spoiled, Workers.of(2));
      assertEquals(one.findings(), two.findings(), "seed " + SEED + ", round " + round);
      assertEquals(one.tallies(), two.tallies());
      assertEquals(one.measures(), two.measures());
    }
  }

  @Test
  void mesh_nothingLeft_refusedAlikeWithTwoThreads() {
    Solid nothing = Revolution.sphere(10, 160).cut(Revolution.sphere(20, 160));
    String one = assertThrows(ShapeException.class, () -> Mesher.mesh(nothing)).getMessage();
    assertEquals(one, assertThrows(ShapeException.class,
        () -> Mesher.mesh(nothing, mesh -> false, Workers.of(2))).getMessage());
  }

  private static void assertSame(Mesh expected, Mesh actual, String what) {
    assertArrayEquals(expected.corners(), actual.corners(), what);
    assertArrayEquals(expected.xyz(), actual.xyz(), what);
  }
}
